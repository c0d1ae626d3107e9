/** What Vite adds to `import.meta`, as the tests use it. */
interface ImportMeta {
  glob<Module>(patterns: string | readonly string[]): Record<string, () => Promise<Module>>;
}
