import { type InquiryInput, systemSchema } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { conditionsOf } from './conditions-of.js';

const conditions = (inquiry: Omit<InquiryInput, 'title'>, sets: readonly { count?: number }[] = [{}]) =>
  conditionsOf(
    systemSchema.parse({
      inquiry: { title: 'x', ...inquiry },
      sets: sets.map((set) => ({ ...set, choices: {} })),
    }),
    0,
  );

describe('pressure', () => {
  it('of a set is laid over that of the process, field by field', () => {
    const { pressureMaxPaGauge } = conditions({
      process: { pressure: { highest: '300 bar' } },
      sets: [{ pressure: { usual: '0.2 bar' } }],
    });
    expect(pressureMaxPaGauge).toBeCloseTo(3e7, 0);
  });

  it('below the weather is a vacuum that every part has to stand', () => {
    expect(conditions({ process: { pressure: { lowest: '20 mbar(a)' } } }).vacuum).toBe(true);
    expect(conditions({ process: { pressure: { lowest: '1 bar(a)' } } }).vacuum).toBeUndefined();
  });
});

describe('zone', () => {
  const site = { zone: '1' } as const;

  it('counts a medium that only the ignition data know', () => {
    const media = [
      { substance: 'toluene', role: 'solvent' },
      { substance: 'carbon disulfide', role: 'reactant' },
    ] as const;
    // EN IEC 60079-20-1: carbon disulfide ignites at 90 °C, class T6, group IIC.
    expect(conditions({ process: { media: [...media] }, site }).marking).toMatchObject({
      gasGroup: 'IIC',
      temperatureClass: 'T6',
    });
  });

  it('asks for what nobody has data of, and passes over what cannot burn', () => {
    const media = [
      { substance: 'methanol', role: 'solvent' },
      { substance: 'nitrogen', role: 'inert gas' },
      { substance: 'a new substance', role: 'reactant' },
    ] as const;
    const { marking, ignitionUnknown } = conditions({ process: { media: [...media] }, site });
    expect(marking).toMatchObject({ temperatureClass: 'T2' });
    expect(ignitionUnknown).toEqual(['a new substance']);
  });
});

describe('vessels at once', () => {
  it('are those of the system', () => {
    expect(conditions({}, [{ count: 8 }]).vesselsAtOnce).toBe(8);
  });
});
