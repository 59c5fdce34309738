declare module 'piexifjs' {
  const piexif: {
    readonly ImageIFD: Readonly<Record<string, number>> & { readonly Orientation: number; readonly DateTime: number };
    readonly ExifIFD: Readonly<
      Record<
        | 'ExposureTime'
        | 'FNumber'
        | 'ISOSpeedRatings'
        | 'FocalLength'
        | 'DateTimeOriginal'
        | 'ShutterSpeedValue'
        | 'ApertureValue',
        number
      >
    >;
    dump(exif: object): string;
    insert(exif: string, jpeg: string): string;
  };
  export default piexif;
}
