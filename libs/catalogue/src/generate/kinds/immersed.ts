import { z } from 'zod';
import { kindOfMaterial } from '../kind.js';
import { finishWord, partDensity } from '../part-materials.js';
import { listed, mm, statedMass } from '../words.js';

/** What a tube weighs for every metre that it reaches down, in 1.4404 [kg/m]. */
const massPerReach = { thermowell: 0.2, tube: 0.3 };
const steelDensity = 8000;

export const temperatureProbes = kindOfMaterial(
  'temperatureProbe',
  {
    kind: z.enum(['thermowell', 'sheathed sensor', 'probe in the bottom valve']),
    headMassKg: z.number().positive().meta({ description: 'Head and sensor' }),
    valveM: z.number().positive().optional().meta({ description: 'Bottom valve that it sits in' }),
  },
  (row, material) => {
    const relative = partDensity(material) / steelDensity;
    const name =
      row.kind === 'probe in the bottom valve'
        ? `Probe in the bottom valve, ${mm(row.valveM ?? 0)} mm`
        : `${row.kind === 'thermowell' || row.portM === 0.006 ? 'Thermowell' : 'Sheathed sensor'} ${mm(row.portM ?? 0)} mm, reach ${mm(row.reachM ?? 0)} mm`;
    return {
      name: listed(
        name,
        row.kind === 'sheathed sensor' && row.portM !== 0.006
          ? material.material
          : finishWord(material, 'sheathed'),
      ),
      massKg: statedMass(row.headMassKg + massPerReach.thermowell * relative * (row.reachM ?? 0)),
      attributes: { kind: row.kind },
    };
  },
);

const tubeHeadKg = 0.1;

export const gasInlets = kindOfMaterial(
  'gasInlet',
  { kind: z.enum(['dip tube', 'wall port']), massKg: z.number().positive().optional() },
  (row, material) => {
    const relative = partDensity(material) / steelDensity;
    return {
      name: listed(
        row.kind === 'dip tube'
          ? `Gas dip tube ${mm(row.portM ?? 0)} mm, reach ${mm(row.reachM ?? 0)} mm`
          : `Gas port with valve ${mm(row.portM ?? 0)} mm`,
        material.material,
      ),
      massKg: row.massKg ?? statedMass(tubeHeadKg + massPerReach.tube * relative * (row.reachM ?? 0)),
      attributes: { kind: row.kind, material: material.material },
    };
  },
);

export const samplers = kindOfMaterial(
  'sampling',
  { kind: z.enum(['dip tube with valve', 'sample lock']), massKg: z.number().positive() },
  (row, material) => ({
    name: listed(
      row.kind === 'sample lock'
        ? `Sample lock ${mm(row.portM ?? 0)} mm`
        : `Sampling dip tube with valve ${mm(row.portM ?? 0)} mm, reach ${mm(row.reachM ?? 0)} mm`,
      material.material,
    ),
    massKg: row.massKg,
    attributes: { kind: row.kind, material: material.material },
  }),
);
