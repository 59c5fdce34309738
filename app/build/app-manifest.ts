/** Icons beside the page, drawn by draw-icons.ts. */
export const iconFiles = ['lampfall.svg', 'lampfall-192.png', 'lampfall-512.png', 'lampfall-maskable-512.png'] as const;

const png = (name: string, size: number, purpose: string) => ({
  src: `./icons/${name}`,
  sizes: `${size}x${size}`,
  type: 'image/png',
  purpose,
});

/**
 * What a device keeps of the page where it is installed (W3C Web Application Manifest). It has no `id`: a relative one goes by
 * the origin, not by the folder, so that two pages of one server would be the same; without one, `start_url` tells them apart.
 */
export const appManifest = {
  name: 'Lampfall',
  short_name: 'Lampfall',
  description: 'Rehearse the lighting of a night foreground before you travel.',
  lang: 'en',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: '#0f1012',
  theme_color: '#0f1012',
  icons: [
    { src: './icons/lampfall.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
    png('lampfall-192.png', 192, 'any'),
    png('lampfall-512.png', 512, 'any'),
    png('lampfall-maskable-512.png', 512, 'maskable'),
  ],
};
