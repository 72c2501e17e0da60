/** A round opening in a shell, with or without a branch set into it [m, Pa]. */
export interface ShellOpening {
  readonly shape: 'cylinder' | 'sphere';
  /** Of the shell, inside; the crown radius of a dished end. */
  readonly innerRadius: number;
  readonly thickness: number;
  /** Of the branch; of the hole where there is none. */
  readonly outerDiameter: number;
  /** 0 for a plain hole. */
  readonly branchThickness: number;
  /** Length of the branch outside the shell; infinite where it is long enough. */
  readonly branchLength: number;
  readonly stress: number;
  readonly branchStress: number;
}

export interface OpeningAreas {
  /** Length of the shell that helps, l_s. */
  readonly shellLength: number;
  /** Length of the branch that helps, l_b. */
  readonly branchLength: number;
  readonly shellMetal: number;
  readonly branchMetal: number;
  readonly shellPressure: number;
  readonly branchPressure: number;
}

/**
 * Areas of metal and of pressure in the section through an opening.
 *
 *   l_s = √((2 r + e) e)       l_b = √((d_eb − e_b) e_b)
 *   A_fs = l_s e               A_fb = (l_b + e) e_b
 *   A_ps = r (l_s + a)         cylinder, a = d_eb/2;  r² (l_s + a)/(2 r + e) for a sphere
 *   A_pb = d_ib/2 (l_b + e)
 */
export const openingAreas = (opening: ShellOpening): OpeningAreas => {
  const { innerRadius: r, thickness: e, outerDiameter, branchThickness: eb } = opening;
  const shellLength = Math.sqrt((2 * r + e) * e);
  const branchLength = Math.min(opening.branchLength, Math.sqrt((outerDiameter - eb) * eb));
  const reach = shellLength + outerDiameter / 2;
  return {
    shellLength,
    branchLength,
    shellMetal: shellLength * e,
    branchMetal: eb * (branchLength + e),
    shellPressure: opening.shape === 'cylinder' ? r * reach : (r * r * reach) / (2 * r + e),
    branchPressure: (outerDiameter / 2 - eb) * (branchLength + e),
  };
};

/**
 * Pressure that the metal round an opening carries: the force of the pressure on its area equals the force of the
 * stress in the metal.
 *
 *   P = (A_fs f + A_fb f_ob) / (A_ps + A_pb + 0.5 (A_fs + A_fb)),  f_ob = min(f, f_b)
 *
 * Without an opening this is the formula of the shell, for a sphere but for a term (e/2r)² on the safe side.
 *
 * @source en-13445-3:2021 §9.5.2 (from memory, unverified)
 */
export const openingPressureOf = (opening: ShellOpening): number => {
  const { shellMetal, branchMetal, shellPressure, branchPressure } = openingAreas(opening);
  const { stress, branchStress } = opening;
  return (
    (shellMetal * stress + branchMetal * Math.min(stress, branchStress)) /
    (shellPressure + branchPressure + (shellMetal + branchMetal) / 2)
  );
};
