interface Named {
  readonly name: string;
  readonly id: string;
}

/** What a file of something is called: "Our hut, north side" -> "our-hut-north-side"; its id where nothing is left of its name. */
export const fileStem = ({ name, id }: Named): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60) || id;
