import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import starlightTypeDoc from 'starlight-typedoc';
import answeringWorker from './answering-worker.mjs';
import rehypeApiPages from './rehype-api-pages.mjs';
import rehypePageWords from './rehype-page-words.mjs';
import rehypeSearchIgnore from './rehype-search-ignore.mjs';

/** Absolute path of something in the repository, whatever the working directory is. */
const root = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** The API pages take half a minute to make; `astro dev` shows those of the last build. */
const builds = process.argv.includes('build');
const entryPoints = readdirSync(root('src'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(root(`src/${entry.name}/index.ts`)))
  .map((entry) => root(`src/${entry.name}/index.ts`));

/** Starlight adds its own plugins after those of the configuration; this one has to come after them. */
const pageWords = {
  name: 'page-words',
  hooks: {
    'astro:config:setup': ({ updateConfig }) =>
      updateConfig({ markdown: { rehypePlugins: [rehypePageWords] } }),
  },
};

export default defineConfig({
  site: process.env.SITE_URL ?? 'https://slantpath.example',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  markdown: {
    remarkPlugins: [remarkMath],
    rehypePlugins: [
      [rehypeKatex, { strict: 'error', throwOnError: true }],
      rehypeSearchIgnore,
      rehypeApiPages,
    ],
  },
  vite: {
    plugins: [answeringWorker],
    build: {
      modulePreload: {
        // What runs in a worker has no document that a link could be put into.
        resolveDependencies: (_file, dependencies, { hostId }) =>
          /\/(answering|session)\./.test(hostId) ? [] : dependencies,
      },
    },
    server: { fs: { allow: [root('.')] } },
    resolve: {
      // The site shows the sources; without these the package's own name would lead to dist/.
      alias: [
        { find: /^slantpath$/, replacement: root('src/index.ts') },
        { find: /^slantpath\/(.+)$/, replacement: root('src/$1/index.ts') },
        { find: /^~\//, replacement: root('site/src/') },
      ],
    },
  },
  integrations: [
    starlight({
      title: 'slantpath',
      description: 'Satellite pointing math in the open: importable, checked, explained.',
      favicon: '/favicon.svg',
      head: [
        { tag: 'link', attrs: { rel: 'manifest', href: '/manifest.webmanifest' } },
        { tag: 'link', attrs: { rel: 'apple-touch-icon', href: '/icon-touch-180.png' } },
        { tag: 'meta', attrs: { name: 'theme-color', content: '#14495c' } },
        { tag: 'script', attrs: { src: '/reach.js', defer: true } },
        ...(builds ? [{ tag: 'script', attrs: { src: '/offline.js', defer: true } }] : []),
      ],
      markdown: { processedDirs: [root('docs')] },
      // A word that is much like the one typed counts nearly as much: people write as they speak. The browser test searches so too.
      pagefind: { ranking: { termSimilarity: 3 } },
      routeMiddleware: './src/routeData.ts',
      components: {
        MarkdownContent: './src/components/MarkdownContent.astro',
        PageTitle: './src/components/PageTitle.astro',
        SocialIcons: './src/components/HeaderTools.astro',
      },
      customCss: [
        'katex/dist/katex.min.css',
        './src/styles/theme.css',
        './src/styles/example.css',
        './src/styles/figure.css',
        './src/styles/answer-first.css',
        './src/styles/home.css',
        './src/styles/print.css',
        './src/styles/print-live.css',
      ],
      expressiveCode: {
        themes: ['github-light', 'github-dark'],
        // Lines that are too long wrap: a phone cannot show them, and a box that scrolls needs a name.
        defaultProps: { wrap: true },
        styleOverrides: { borderRadius: '2px', codeFontSize: '0.875rem' },
      },
      plugins: builds
        ? [
            starlightTypeDoc({
              entryPoints,
              tsconfig: root('tsconfig.build.json'),
              output: 'api',
              typeDoc: {
                entryFileName: 'overview',
                // Types stand on the page of their module: a page for each would weigh more than all the rest.
                membersWithOwnFile: ['Function', 'Class'],
                disableSources: true,
                skipErrorChecking: true,
                parametersFormat: 'table',
                interfacePropertiesFormat: 'table',
                typeAliasPropertiesFormat: 'table',
                typeDeclarationFormat: 'table',
                tableColumnSettings: { hideModifiers: true },
                useCodeBlocks: true,
              },
            }),
          ]
        : [],
      // The sidebar is made in src/routeData.ts.
      sidebar: [],
    }),
    pageWords,
  ],
});
