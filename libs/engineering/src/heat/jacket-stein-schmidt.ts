/** Flow in the annulus of a jacket with nozzles; lengths [m], properties at the mean temperature, SI. */
export interface JacketFlow {
  readonly vesselOuterDiameterM: number;
  readonly jacketInnerDiameterM: number;
  readonly jacketHeightM: number;
  readonly inletDiameterM: number;
  readonly mediumFlowKgPerS: number;
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  readonly inlet: 'tangential' | 'radial';
}

/** Darcy friction factor of a smooth gap by Prandtl and von Kármán, 1/√f = −2 log10(2.51/(Re √f)). */
const smoothFriction = (reynolds: number): number => {
  let inverseRoot = 7;
  for (let pass = 0; pass < 20; pass += 1) inverseRoot = -2 * Math.log10((2.51 * inverseRoot) / reynolds);
  return 1 / inverseRoot ** 2;
};

const turbulentFrom = 2300;

const circulation = (flow: JacketFlow, friction: number): number => {
  const { vesselOuterDiameterM: D, jacketHeightM: H, inletDiameterM: d } = flow;
  const volumeFlow = flow.mediumFlowKgPerS / flow.densityKgPerM3;
  const gap = (flow.jacketInnerDiameterM - D) / 2;
  const inletVelocity = volumeFlow / ((Math.PI / 4) * d ** 2);
  const loss = (friction * D * H) / d ** 2;
  const k3 = inletVelocity / 4 - inletVelocity / (4 * loss);
  const k4 = inletVelocity ** 2 / (2 * loss);
  const atInlet = k3 + Math.sqrt(k3 ** 2 + k4);
  const around = (inletVelocity * Math.log1p((loss * atInlet) / inletVelocity)) / loss;
  return Math.hypot(around, volumeFlow / (Math.PI * D * gap));
};

const radialVelocity = (flow: JacketFlow): number => {
  const { vesselOuterDiameterM: D, jacketHeightM: H } = flow;
  const gap = (flow.jacketInnerDiameterM - D) / 2;
  const inletWidth = ((Math.PI / 8) * flow.inletDiameterM ** 2) / gap;
  const meanWidth = (Math.PI / 2) * D * Math.sqrt(1 + ((Math.PI ** 2 / 4) * D ** 2) / H ** 2);
  const meanVelocity = flow.mediumFlowKgPerS / flow.densityKgPerM3 / (2 * gap * meanWidth);
  const ratio = inletWidth / meanWidth;
  return Math.abs(ratio - 1) < 1e-9 ? meanVelocity : (meanVelocity * -Math.log(ratio)) / (1 - ratio);
};

/** Re of the annulus on twice the gap. */
export const steinSchmidtReynolds = (flow: JacketFlow): number => {
  const hydraulic = flow.jacketInnerDiameterM - flow.vesselOuterDiameterM;
  const reynolds = (velocity: number): number =>
    (velocity * hydraulic * flow.densityKgPerM3) / flow.viscosityPaS;
  if (flow.inlet === 'radial') return reynolds(radialVelocity(flow));
  let friction = smoothFriction(1e5);
  let found = 0;
  for (let pass = 0; pass < 10; pass += 1) {
    found = reynolds(circulation(flow, friction));
    friction = smoothFriction(Math.max(found, turbulentFrom));
  }
  return found;
};

/**
 * Nusselt number in a jacket with nozzles by Stein and Schmidt, on twice the gap, without the wall viscosity and
 * without free convection: the cube root of the sum of cubes of the laminar, entry and turbulent numbers.
 */
export const steinSchmidtNusselt = (flow: JacketFlow, prandtl: number): number => {
  const { vesselOuterDiameterM: D, jacketHeightM: H } = flow;
  const length = Math.sqrt((Math.PI ** 2 / 4) * D ** 2 + H ** 2);
  const slenderness = (flow.jacketInnerDiameterM - D) / length;
  const reynolds = steinSchmidtReynolds(flow);
  const developed = 3.66;
  const developing = 1.62 * Math.cbrt(prandtl * reynolds * slenderness);
  const entry = 0.664 * Math.cbrt(prandtl) * Math.sqrt(reynolds * slenderness);
  const turbulent =
    reynolds < turbulentFrom
      ? 0
      : 0.0115 *
        Math.cbrt(prandtl) *
        reynolds ** 0.9 *
        (1 - (turbulentFrom / reynolds) ** 2.5) *
        (1 + slenderness ** (2 / 3));
  return Math.cbrt(developed ** 3 + developing ** 3 + entry ** 3 + turbulent ** 3);
};
