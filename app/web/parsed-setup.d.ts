declare module '*.json?parsed' {
  const setup: import('../../core/setup/schema/setup.ts').Setup;
  export default setup;
}
