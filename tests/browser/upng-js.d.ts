declare module 'upng-js' {
  interface Picture {
    width: number;
    height: number;
  }
  const upng: {
    decode(file: Uint8Array): Picture;
    toRGBA8(picture: Picture): ArrayBuffer[];
    /** Colours: 0 for all. */
    encode(frames: ArrayBuffer[], width: number, height: number, colours: number): ArrayBuffer;
  };
  export default upng;
}
