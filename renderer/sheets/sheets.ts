import type { ComponentType } from 'react';
import type { SheetName } from '../state/workbench.ts';
import { CorrosionAndLifeSheet } from './CorrosionAndLife.tsx';
import { DeploymentAndRecoverySheet } from './DeploymentAndRecovery.tsx';
import { FatigueSheet } from './Fatigue.tsx';
import { FixingsSheet } from './Fixings.tsx';
import { GridSheet } from './Grid.tsx';
import { LoadsSheet } from './Loads.tsx';
import { HydrodynamicsSheet } from './Hydrodynamics.tsx';
import { NoteSheet } from './Note.tsx';
import { OptionsSheet } from './Options.tsx';
import { PanelsSheet } from './Panels.tsx';
import { SearchSheet } from './Search.tsx';
import { StrengthSheet } from './Strength.tsx';
import { TankTestSheet } from './TankTest.tsx';
import { WholePlateSheet } from './WholePlate.tsx';

/** The topics in the order of the work. */
export const sheets: readonly { readonly name: SheetName; readonly Sheet: ComponentType }[] = [
  { name: 'grid', Sheet: GridSheet },
  { name: 'panels', Sheet: PanelsSheet },
  { name: 'fixings', Sheet: FixingsSheet },
  { name: 'loads', Sheet: LoadsSheet },
  { name: 'hydrodynamics', Sheet: HydrodynamicsSheet },
  { name: 'tank', Sheet: TankTestSheet },
  { name: 'strength', Sheet: StrengthSheet },
  { name: 'whole', Sheet: WholePlateSheet },
  { name: 'fatigue', Sheet: FatigueSheet },
  { name: 'durability', Sheet: CorrosionAndLifeSheet },
  { name: 'recovery', Sheet: DeploymentAndRecoverySheet },
  { name: 'search', Sheet: SearchSheet },
  { name: 'options', Sheet: OptionsSheet },
  { name: 'note', Sheet: NoteSheet },
];
