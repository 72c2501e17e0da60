'use client';

import { processKinds } from '@flangewise/model';
import { useFormContext } from 'react-hook-form';
import { ChoiceField, SaidField, SpanField, TextField } from './fields';
import type { FormValues } from './form-values';
import { Row, Section } from './section';

const kinds = [['', 'not said'], ...processKinds.map((kind) => [kind, kind] as const)] as const;

const meanings = [
  ['', 'not said'],
  ['total', 'the total pressure'],
  ['partial pressure of the gas', 'that of the gas alone'],
] as const;

/** Fields that are folded away; open when one of them holds something. */
const folded = [
  'density',
  'foaming',
  'solids',
  'heatOfReactionPer',
  'selfReactive',
  'calorimetry',
  'regulatorKv',
  'supplyPressure',
  'heatUpTime',
] as const;

/** What the process does and needs. */
export function ProcessSection() {
  const { formState } = useFormContext<FormValues>();
  const given = formState.defaultValues?.process;
  const open = folded.some((key) => given?.[key] !== undefined);
  return (
    <Section
      title="Process"
      more={{
        title: 'More about solids, gas supply and hazards',
        open,
        children: (
          <>
            <Row>
              <TextField
                name="process.density"
                label="Density of the batch"
                kind="density"
                placeholder="900 kg/m³"
              />
              <TextField
                name="process.heatUpTime"
                label="Heat-up time wanted"
                kind="time"
                placeholder="60 min"
              />
              <SaidField name="process.foaming" label="Foams" />
            </Row>
            <Row>
              <TextField
                name="process.solids.massFraction"
                label="Solids, share by mass"
                kind="ratio"
                placeholder="5 %"
              />
              <TextField
                name="process.solids.particleSize"
                label="Particle size"
                kind="length"
                placeholder="80 µm"
              />
              <TextField
                name="process.solids.density"
                label="Density of the solid"
                kind="density"
                placeholder="2500 kg/m³"
              />
            </Row>
            <Row>
              <TextField
                name="process.supplyPressure"
                label="Pressure of the gas supply"
                kind="pressure"
                placeholder="200 bar"
              />
              <TextField
                name="process.regulatorKv"
                label="Kv of the gas regulator, m³/h"
                placeholder="0.05"
              />
              <TextField
                name="process.heatOfReactionPer"
                label="Heat is per mole of"
                placeholder="hydrogen"
              />
            </Row>
            <Row>
              <SaidField name="process.selfReactive" label="Can decompose by itself" />
              <SaidField name="process.calorimetry" label="Calorimetric data at hand" />
              <SaidField name="process.vacuum" label="Also evacuated" />
            </Row>
          </>
        ),
      }}
    >
      <Row>
        <ChoiceField name="process.kind" label="Kind of process" options={kinds} />
        <SaidField name="process.exothermic" label="Gives heat" />
        <ChoiceField name="process.pressureMeans" label="The pressure is" options={meanings} />
      </Row>
      <div className="grid gap-x-8 gap-y-4 lg:grid-cols-2">
        <SpanField
          name="process.pressure"
          label="Pressure, gauge unless said"
          kind="pressure"
          examples={['5 bar', '40 bar', '60 bar']}
        />
        <SpanField
          name="process.temperature"
          label="Temperature"
          kind="temperature"
          examples={['20 °C', '100 °C', '150 °C']}
        />
        <SpanField
          name="process.stirringSpeed"
          label="Stirring speed"
          kind="speed"
          examples={['600 rpm', '', '1200 rpm']}
        />
        <fieldset className="min-w-0">
          <legend className="mb-1 font-medium">Viscosity</legend>
          <div className="grid grid-cols-3 gap-3">
            <TextField
              name="process.viscosity.start"
              label="at the start"
              kind="viscosity"
              placeholder="1 mPa·s"
            />
            <TextField
              name="process.viscosity.end"
              label="at the end"
              kind="viscosity"
              placeholder="60 000 mPa·s"
            />
          </div>
        </fieldset>
      </div>
      <Row>
        <TextField
          name="process.heatOfReaction"
          label="Heat of reaction, negative gives heat"
          kind="molarEnergy"
          placeholder="-180 kJ/mol"
        />
        <TextField
          name="process.concentration"
          label="Reactant at the start"
          kind="molarConcentration"
          placeholder="1 mol/L"
        />
        <TextField
          name="process.peakUptake"
          label="Highest gas uptake"
          kind="amountFlow"
          placeholder="0.4 mol/min"
        />
      </Row>
    </Section>
  );
}
