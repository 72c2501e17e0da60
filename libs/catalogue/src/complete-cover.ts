import { designStressAt, evaluate, flatCover, materialDensity } from '@flangewise/engineering';
import { fail, type ItemOf, type Outcome, succeed } from '@flangewise/model';
import type { CoverDesign } from './cover-design.js';
import { evenPatternsOf } from './port-pattern.js';
import { preferredBelow } from './preferred-pressure.js';
import { rounded } from './rounded.js';

/**
 * Computed permissible pressure of a cover at its highest temperature [Pa]: flat cover by EN 13445-3 clause 10 on
 * the circle of its bolts, with its openings, for a self-energising seal; a lined cover by its carrier.
 *
 * @error as designStressAt and strength.flatCover
 */
export const permissibleCoverPressurePa = (design: CoverDesign): Outcome<number> => {
  const stress = designStressAt(design.carrier ?? design.material, design.maxTemperatureK);
  if (!stress.ok) return stress;
  let carried = Infinity;
  for (const pattern of evenPatternsOf(design.ports)) {
    const rated = evaluate(flatCover, {
      thicknessM: design.thicknessM,
      sealDiameterM: design.sealDiameterM,
      loadDiameterM: design.loadCircleM,
      allowableStressPa: stress.value.stressPa,
      coverCentralOpeningM: design.bushingBoreM,
      ...(pattern.count === 0
        ? {}
        : {
            coverPortDiameterM: pattern.diameterM,
            coverPortCount: pattern.count,
            coverPortCircleM: pattern.circleM,
          }),
    });
    if (!rated.ok) return rated;
    carried = Math.min(carried, rated.value.pressurePaGauge);
  }
  return succeed(carried);
};

const massKg = (design: CoverDesign): Outcome<number> => {
  const density = materialDensity(design.carrier ?? design.material);
  if (!density.ok) return density;
  const openings = design.ports.reduce((sum, port) => sum + port.diameterM ** 2, design.bushingBoreM ** 2);
  return succeed(
    density.value.value * (Math.PI / 4) * (design.outerDiameterM ** 2 - openings) * design.thicknessM,
  );
};

/**
 * The item of a cover from its design: mass and PS computed, none given.
 *
 * @error CALC_OUT_OF_RANGE for a cover too thin for the lowest pressure; otherwise as the parts
 */
export const completeCover = (design: CoverDesign): Outcome<ItemOf<'cover'>> => {
  const carried = permissibleCoverPressurePa(design);
  if (!carried.ok) return carried;
  const bar = preferredBelow(carried.value);
  if (bar === undefined) {
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `${design.id} carries ${(carried.value / 1e5).toFixed(2)} bar, less than the lowest pressure of the range; make it thicker`,
      field: 'thicknessM',
      given: design.thicknessM,
    });
  }
  const mass = massKg(design);
  if (!mass.ok) return mass;
  const { id, families, bore, material, construction, carrier, thicknessM, ports, bushing, leadTimeDays } =
    design;
  const word = construction === 'lined' ? `${material}-lined` : material;
  return succeed({
    slot: 'cover',
    id,
    name: `Cover bore ${String(bore)}, ${word}, PS ${String(bar)}${design.label}`,
    families,
    massKg: rounded(mass.value),
    leadTimeDays,
    wetted: [material],
    rating: {
      maxPressurePaGauge: bar * 1e5,
      minTemperatureK: design.minTemperatureK,
      maxTemperatureK: design.maxTemperatureK,
      vacuum: true,
    },
    portsM: [],
    life: 'current',
    bore,
    material,
    construction,
    ...(carrier === null ? {} : { carrier }),
    thicknessM,
    ports,
    bushing,
  });
};
