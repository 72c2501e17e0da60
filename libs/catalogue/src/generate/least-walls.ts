import { permissibleExternalPressurePa } from '../external-pressure.js';
import { permissiblePressurePa } from '../internal-pressure.js';
import type { VesselDesign } from '../vessel-design.js';
import { leastOf } from '../least-step.js';

const wallStep = { step: 0.0005, most: 0.12 };
/** Wall that decides nothing while another one is looked for. */
const amplyM = 0.12;
const atmospherePa = 101_325;

const withWalls = (design: VesselDesign, walls: Partial<VesselDesign['geometry']>): VesselDesign => ({
  ...design,
  geometry: { ...design.geometry, ...walls },
});

const carries = (design: VesselDesign, pressurePaGauge: number): boolean => {
  const carried = permissiblePressurePa(design);
  return carried.ok && carried.value >= pressurePaGauge;
};

/** The jacket, and in metal full vacuum with it. */
const standsOutside = (design: VesselDesign): boolean => {
  const outside = permissibleExternalPressurePa(design);
  const jacketPa = design.jacket?.maxPressurePaGauge ?? 0;
  return outside.ok && outside.value >= jacketPa + (design.construction === 'lined' ? 0 : atmospherePa);
};

const found = (value: number | undefined, design: VesselDesign, what: string): number => {
  if (value === undefined) throw new Error(`${design.id}: no ${what} up to 120 mm is enough`);
  return value;
};

/** The least walls of shell, end and bottom branch that carry a pressure inside, and jacket and vacuum outside. */
export const leastWalls = (design: VesselDesign, bar: number): VesselDesign => {
  const pressurePaGauge = bar * 1e5;
  const plain: VesselDesign = { ...design, bottomPortM: null };
  const least = design.geometry.wallThicknessM;
  const shell = leastOf(least, wallStep, (wallThicknessM) =>
    carries(withWalls(plain, { wallThicknessM, endThicknessM: amplyM }), pressurePaGauge),
  );
  const inside = withWalls(plain, { wallThicknessM: found(shell, design, 'shell') });
  const end = leastOf(least, wallStep, (endThicknessM) =>
    carries(withWalls(inside, { endThicknessM }), pressurePaGauge),
  );
  const closed = withWalls(inside, { endThicknessM: found(end, design, 'end') });
  const thicker = leastOf(0, { step: 0.0005, most: 0.03 }, (moreM) =>
    standsOutside(
      withWalls(closed, {
        wallThicknessM: closed.geometry.wallThicknessM + moreM,
        endThicknessM: closed.geometry.endThicknessM + moreM,
      }),
    ),
  );
  const moreM = found(thicker, design, 'wall against jacket and vacuum');
  const body = withWalls(closed, {
    wallThicknessM: Number((closed.geometry.wallThicknessM + moreM).toFixed(5)),
    endThicknessM: Number((closed.geometry.endThicknessM + moreM).toFixed(5)),
  });
  return design.bottomPortM === null
    ? body
    : withBranch({ ...body, bottomPortM: design.bottomPortM }, pressurePaGauge);
};

/** The bottom port with the least branch that carries; where no branch alone does, the end is thicker. */
const withBranch = (design: VesselDesign, pressurePaGauge: number): VesselDesign => {
  const end = leastOf(design.geometry.endThicknessM, wallStep, (endThicknessM) =>
    carries(
      withWalls({ ...design, bottomBranchThicknessM: 2 * endThicknessM }, { endThicknessM }),
      pressurePaGauge,
    ),
  );
  const endThicknessM = found(end, design, 'end with the bottom port');
  const body = withWalls(design, { endThicknessM });
  const branch = leastOf(0.002, wallStep, (bottomBranchThicknessM) =>
    carries({ ...body, bottomBranchThicknessM }, pressurePaGauge),
  );
  return { ...body, bottomBranchThicknessM: found(branch, design, 'bottom branch') };
};
