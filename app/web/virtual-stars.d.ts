/** Address of the packed stars, see app/build/stars-plugin.ts. */
declare module 'virtual:stars' {
  const address: string;
  export default address;
}
