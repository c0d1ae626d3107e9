import { defineCollection } from 'astro:content';
import { docsSchema } from '@astrojs/starlight/schema';
import { glob } from 'astro/loaders';

/** Hand-written pages live in `docs/` of the repository, generated API pages under the site. */
const pages = glob({
  base: '..',
  pattern: ['docs/*.mdx', 'docs/!(decisions)/**/*.{md,mdx}', 'site/src/content/docs/api/**/*.md'],
  generateId: ({ entry, data }) =>
    typeof data['slug'] === 'string'
      ? data['slug']
      : entry
          .replace(/^(docs|site\/src\/content\/docs)\//, '')
          .replace(/\.mdx?$/, '')
          .replace(/\/index$/, '')
          .toLowerCase(),
});

export const collections = { docs: defineCollection({ loader: pages, schema: docsSchema() }) };
