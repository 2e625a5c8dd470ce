import type { ComponentType } from 'react';
import type { SheetName } from '../state/stages.ts';
import { CatalogueSheet } from './catalogue/Catalogue.tsx';
import { CorrosionAndLifeSheet } from './CorrosionAndLife.tsx';
import { DeploymentAndRecoverySheet } from './DeploymentAndRecovery.tsx';
import { FatigueSheet } from './Fatigue.tsx';
import { FixingsSheet } from './Fixings.tsx';
import { GridSheet } from './Grid.tsx';
import { IssueSheet } from './Issue.tsx';
import { LoadsSheet } from './Loads.tsx';
import { HydrodynamicsSheet } from './Hydrodynamics.tsx';
import { NoteSheet } from './Note.tsx';
import { OptionsSheet } from './Options.tsx';
import { PanelsSheet } from './Panels.tsx';
import { SeaRecordsSheet } from './SeaRecords.tsx';
import { SearchSheet } from './Search.tsx';
import { StrengthSheet } from './Strength.tsx';
import { TankTestSheet } from './TankTest.tsx';
import { WholePlateSheet } from './WholePlate.tsx';

/** What is shown beside the plate for each topic. */
export const sheets: Readonly<Record<SheetName, ComponentType>> = {
  grid: GridSheet,
  panels: PanelsSheet,
  fixings: FixingsSheet,
  catalogue: CatalogueSheet,
  loads: LoadsSheet,
  hydrodynamics: HydrodynamicsSheet,
  tank: TankTestSheet,
  sea: SeaRecordsSheet,
  strength: StrengthSheet,
  whole: WholePlateSheet,
  fatigue: FatigueSheet,
  durability: CorrosionAndLifeSheet,
  recovery: DeploymentAndRecoverySheet,
  search: SearchSheet,
  options: OptionsSheet,
  note: NoteSheet,
  issue: IssueSheet,
};
