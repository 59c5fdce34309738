/** What a compass points to at a place and a date. */
export type MagneticNorth =
  | {
      readonly kind: 'declination';
      /** How far magnetic north is east of true north; negative = west. True bearing = magnetic bearing + this. */
      readonly declinationDegrees: number;
      /** Such as "WMM-2025". */
      readonly modelName: string;
      readonly validUntilMilliseconds: number;
      /** The field is so weak along the ground that a compass is slow and easily led astray. */
      readonly isWeak: boolean;
    }
  | {
      readonly kind: 'none';
      /** No model covers the date; or the place is so near a magnetic pole that a compass is no guide; or it is no place. */
      readonly reason: 'date' | 'near-pole' | 'place';
    };

/**
 * Level field under which the makers of the World Magnetic Model call a compass unreliable, and to be used with caution,
 * nanotesla (WMM2020 report: blackout zones and caution zones).
 */
const blackoutNanotesla = 2000;
const cautionNanotesla = 6000;

type Model = typeof import('geomagnetism').model;

/** The package has no ES modules, so that where its function is depends on who loads it. */
const loadModel = async (): Promise<Model> => {
  const loaded: { readonly model?: Model; readonly default?: { readonly model: Model } } = await import('geomagnetism');
  const model = loaded.model ?? loaded.default?.model;
  if (!model) throw new Error('the magnetic model has not been built in');
  return model;
};

const modelOn = (model: Model, date: Date): ReturnType<Model> | null => {
  if (!Number.isFinite(date.getTime())) return null;
  try {
    return model(date);
  } catch {
    return null;
  }
};

/**
 * Magnetic declination by the World Magnetic Model, loaded when it is first asked for.
 *
 * @param latitudeDegrees north positive
 * @param longitudeDegrees east positive
 * @param heightKm over the ellipsoid; matters little
 */
export const magneticNorth = async (
  latitudeDegrees: number,
  longitudeDegrees: number,
  utcMilliseconds: number,
  heightKm = 0,
): Promise<MagneticNorth> => {
  const isPlace = Math.abs(latitudeDegrees) <= 90 && Math.abs(longitudeDegrees) <= 360;
  if (!isPlace) return { kind: 'none', reason: 'place' };
  const model = modelOn(await loadModel(), new Date(utcMilliseconds));
  if (!model) return { kind: 'none', reason: 'date' };
  const { decl, h } = model.point([latitudeDegrees, longitudeDegrees, heightKm]);
  if (!(h >= blackoutNanotesla) || !Number.isFinite(decl)) return { kind: 'none', reason: 'near-pole' };
  return {
    kind: 'declination',
    declinationDegrees: decl,
    modelName: model.name,
    validUntilMilliseconds: model.end_date.getTime(),
    isWeak: h < cautionNanotesla,
  };
};
