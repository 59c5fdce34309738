import { ByteText } from '../obj/byte-text.ts';
import { ScanError } from '../scan-error.ts';
import { bytesOfType, type PlyHead, type PlyType } from './ply-head.ts';

/** Gives the numbers of a body one after another. */
export interface PlyNumbers {
  next(type: PlyType): number;
  /** Skips so many numbers. */
  skip(type: PlyType, count: number): void;
}

const breaksOff = () => new ScanError('The file breaks off in the middle');

class BinaryNumbers implements PlyNumbers {
  private readonly view: DataView;
  private readonly isLittle: boolean;
  private at: number;

  constructor(bytes: Uint8Array, at: number, isLittle: boolean) {
    this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.at = at;
    this.isLittle = isLittle;
  }

  next(type: PlyType): number {
    const at = this.at;
    this.skip(type, 1);
    switch (type) {
      case 'int8':
        return this.view.getInt8(at);
      case 'uint8':
        return this.view.getUint8(at);
      case 'int16':
        return this.view.getInt16(at, this.isLittle);
      case 'uint16':
        return this.view.getUint16(at, this.isLittle);
      case 'int32':
        return this.view.getInt32(at, this.isLittle);
      case 'uint32':
        return this.view.getUint32(at, this.isLittle);
      case 'float32':
        return this.view.getFloat32(at, this.isLittle);
      case 'float64':
        return this.view.getFloat64(at, this.isLittle);
    }
  }

  skip(type: PlyType, count: number): void {
    const to = this.at + count * bytesOfType[type];
    if (!(to <= this.view.byteLength)) throw breaksOff();
    this.at = to;
  }
}

class TextNumbers implements PlyNumbers {
  private readonly text: ByteText;

  constructor(bytes: Uint8Array, at: number) {
    this.text = new ByteText(bytes, at);
  }

  next(): number {
    if (!this.text.toNextWordAnywhere()) throw breaksOff();
    return this.text.number();
  }

  skip(_: PlyType, count: number): void {
    for (let i = 0; i < count; i++) this.next();
  }
}

/** The numbers of a body; they throw a ScanError where the file breaks off. */
export const plyNumbers = (bytes: Uint8Array, { format, bodyStart }: PlyHead): PlyNumbers =>
  format === 'ascii'
    ? new TextNumbers(bytes, bodyStart)
    : new BinaryNumbers(bytes, bodyStart, format === 'binary_little_endian');
