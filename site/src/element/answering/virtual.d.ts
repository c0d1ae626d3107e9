/** Made by `site/answering-worker.mjs`. */
declare module 'virtual:answering-worker' {
  /** Address of the worker. */
  const url: string;
  export default url;
}
