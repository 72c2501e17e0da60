'use client';

import { ChoiceField, SaidField, TextField, WishField } from './fields';
import { Row, Section } from './section';

const zones = [
  ['', 'not said'],
  ['none', 'no hazardous area'],
  ['0', 'zone 0'],
  ['1', 'zone 1'],
  ['2', 'zone 2'],
  ['20', 'zone 20, dust'],
  ['21', 'zone 21, dust'],
  ['22', 'zone 22, dust'],
] as const;

/** Where the system will stand. */
export function SiteSection() {
  return (
    <Section title="Place and use">
      <Row>
        <ChoiceField name="site.zone" label="Hazardous area" options={zones} />
        <TextField name="site.zoneGas" label="Gas of the hazardous area" placeholder="hydrogen" />
        <TextField name="requirements.openingsPerDay" label="Opened how often a day" placeholder="2" />
      </Row>
      <Row>
        <TextField name="site.ceilingHeight" label="Floor to ceiling" kind="length" placeholder="2.6 m" />
        <TextField name="site.country" label="Country" placeholder="Germany" />
        <SaidField name="site.coolingWater" label="Cooling water at hand" />
      </Row>
    </Section>
  );
}

const wishes = [
  ['noMetalContact', 'No metal may touch the product'],
  ['seeInside', 'View inside'],
  ['bottomOutlet', 'Emptied through the bottom'],
  ['tilt', 'Tilts for emptying and cleaning'],
  ['sampling', 'Sampling under pressure'],
  ['dosingAgainstPressure', 'Dosing against pressure'],
  ['refluxCondenser', 'Reflux condenser'],
  ['catalystBasket', 'Catalyst basket'],
  ['uptakeRecorded', 'Gas uptake recorded'],
  ['inerting', 'Inerting'],
  ['materialCertificates', 'Material certificates'],
  ['qualificationPapers', 'Qualification papers'],
] as const;

const impellers = [
  ['', 'whatever fits'],
  ...[
    'disc turbine',
    'pitched blade turbine',
    'paddle',
    'propeller',
    'anchor',
    'double helical ribbon',
    'hollow shaft turbine',
    'magnetic bar',
  ].map((name) => [name, name] as const),
] as const;

const currencies = [
  ['', 'not said'],
  ['EUR', 'EUR'],
  ['GBP', 'GBP'],
  ['USD', 'USD'],
  ['CHF', 'CHF'],
] as const;

/** What the client wishes beyond what the process needs. */
export function WishesSection() {
  return (
    <Section
      title="Wishes"
      more={{
        title: 'Stirrer, budget, date, end use and free ports',
        open: false,
        children: (
          <>
            <Row>
              <ChoiceField name="requirements.impeller" label="Stirrer" options={impellers} />
              <TextField name="commercial.budget" label="Budget" placeholder="60000" />
              <ChoiceField name="commercial.currency" label="Currency" options={currencies} />
            </Row>
            <Row>
              <TextField name="commercial.deliveryWeeks" label="Wanted within, weeks" placeholder="16" />
              <TextField name="commercial.endUse" label="End use" placeholder="research" />
            </Row>
            <Row>
              <TextField
                name="requirements.freePorts.count"
                label="Ports of the cover that stay free"
                placeholder="2"
              />
              <TextField
                name="requirements.freePorts.size"
                label="Each of at least"
                kind="length"
                placeholder="10 mm"
              />
            </Row>
          </>
        ),
      }}
    >
      <div className="grid grid-cols-1 gap-x-6 sm:grid-cols-2 md:grid-cols-3">
        {wishes.map(([name, label]) => (
          <WishField key={name} name={`requirements.${name}`} label={label} />
        ))}
      </div>
    </Section>
  );
}
