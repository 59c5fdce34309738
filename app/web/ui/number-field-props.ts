/** What a field of one number is told. */
export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  /** Shown behind the number, and taken when nothing else is typed; "" for none. */
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly onChange: (value: number) => void;
  /** Next value up or down for the arrow keys; a plain step otherwise. */
  readonly step?: number | ((value: number, direction: 1 | -1) => number);
  readonly digits?: number;
  /** Why it can't be more than the most: "the shutter is open no longer". */
  readonly whyMost?: string;
  /** Least and most as they are told, where plain digits will not do. */
  readonly ends?: readonly [least: number, most: number];
  readonly prefix?: string;
  /** Stepping past one end goes on at the other, as on a clock. */
  readonly wraps?: boolean;
  /** How the number is written where plain digits will not do. */
  readonly format?: (value: number) => string;
  /** How it is read where `parseQuantity` will not do. */
  readonly parse?: (text: string) => number | null;
}
