import { impellerTorque } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import { assumedDensityKgPerM3, densityAssumed } from '../../batch-mass.js';
import type { Conditions } from '../../conditions.js';
import { type Figure, missing, notApplicable, type Proof, reckon, unverified } from '../../figure.js';

export const impellerReads = {
  vessel: ['geometry'],
  stirrer: ['impeller', 'diameterM', 'bladeCount', 'bladeWidthM'],
} as const;

/** With the baffles that are chosen; what only informs reads them, what decides takes the careful side. */
export const baffledReads = { ...impellerReads, baffles: ['count', 'widthM'] } as const;

export const impellerConditions = [
  'viscosityMinPaS',
  'viscosityMaxPaS',
  'densityKgPerM3',
  'speedMaxPerS',
  'serviceFactor',
] as const;

export interface ImpellerParts {
  readonly vessel: Pick<ItemOf<'vessel'>, 'geometry'>;
  readonly stirrer: Pick<ItemOf<'stirrer'>, 'impeller' | 'diameterM' | 'bladeCount' | 'bladeWidthM'>;
  readonly baffles?: Pick<ItemOf<'baffles'>, 'count' | 'widthM'> | null;
}

type Liquid = Pick<Conditions, (typeof impellerConditions)[number]>;

const widestBaffle = 0.25;
const bladeWidths = { least: 0.02, most: 1 };

/**
 * The impeller as the stirring calculations take it. Without baffles nothing is said of them: thermowell, dip tube
 * and coil baffle too, and the calculations then take four of a tenth, the careful side for torque.
 */
export const impellerInVessel = ({ vessel, stirrer, baffles }: ImpellerParts) => {
  const { innerDiameterM } = vessel.geometry;
  const width = stirrer.bladeWidthM / stirrer.diameterM;
  return {
    impeller: stirrer.impeller,
    impellerDiameterM: stirrer.diameterM,
    vesselDiameterM: innerDiameterM,
    bladeCount: stirrer.bladeCount,
    ...(width >= bladeWidths.least && width <= bladeWidths.most ? { bladeWidthOverDiameter: width } : {}),
    ...(baffles === null || baffles === undefined
      ? {}
      : {
          baffleCount: baffles.count,
          baffleWidthOverVessel: Math.min(widestBaffle, baffles.widthM / innerDiameterM),
        }),
  };
};

interface Load {
  readonly highTorqueNm: number;
  readonly highPowerW: number;
}

/** Torque of the coupling, torque and power of the drive ask for the same loads; they are computed once. */
const known = new Map<string, Load | string>();
const mostKnown = 20_000;

const loadAt = (
  impeller: ReturnType<typeof impellerInVessel>,
  at: { readonly densityKgPerM3: number; readonly viscosityPaS: number; readonly speedPerS: number },
  proof: Proof | undefined,
): Load | string => {
  const key = `${Object.values(impeller).join()};${Object.values(at).join()}`;
  const before = proof === undefined ? known.get(key) : undefined;
  if (before !== undefined) return before;
  const load = reckon(impellerTorque, { ...impeller, ...at }, proof);
  const found = load.ok ? load.value : load.error.message;
  if (known.size >= mostKnown) known.clear();
  known.set(key, found);
  return found;
};

const rough = 'Upper end of measured power numbers was taken.';

/**
 * Highest torque or power over the batch: at its thinnest (inertia) and at its thickest (friction), with the service
 * factor and the upper end of the measured power numbers.
 */
export const impellerLoad = (
  what: keyof Load,
  parts: ImpellerParts,
  at: { readonly liquid: Liquid; readonly proof?: Proof | undefined },
): Figure => {
  const { viscosityMinPaS, viscosityMaxPaS, densityKgPerM3, speedMaxPerS, serviceFactor } = at.liquid;
  if (speedMaxPerS === undefined) return missing('process.stirringSpeed');
  if (viscosityMaxPaS === undefined) return missing('process.viscosity');
  // A stirrer that does not go into the vessel is refused by its own rule.
  if (parts.stirrer.diameterM >= parts.vessel.geometry.innerDiameterM) return notApplicable;
  const impeller = impellerInVessel(parts);
  const loads = [...new Set([viscosityMinPaS ?? viscosityMaxPaS, viscosityMaxPaS])].map((viscosityPaS) =>
    loadAt(
      impeller,
      { densityKgPerM3: densityKgPerM3 ?? assumedDensityKgPerM3, viscosityPaS, speedPerS: speedMaxPerS },
      at.proof,
    ),
  );
  const failed = loads.find((load) => typeof load === 'string');
  if (failed !== undefined) return missing(failed);
  const highest = Math.max(...loads.map((load) => (typeof load === 'string' ? 0 : load[what])));
  return unverified(
    highest * serviceFactor,
    densityKgPerM3 === undefined ? `${rough} ${densityAssumed}` : rough,
  );
};
