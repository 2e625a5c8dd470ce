import { checks } from '../checks/index.ts';

/** What this copy of the program has not been held against, in sentences. */
export function limitsOfValidation(): readonly string[] {
  const remembered = checks.filter(({ source }) => source.some(({ memory }) => memory)).length;
  return [
    `${remembered} of ${checks.length} checks cite a rule from memory: it was not read in the document itself while the program was made. Each note marks them.`,
    'No plate in the sea was measured for this program. Added mass and drag of a gapped plate are uncertain by a factor of two or more without a tank test at the right amplitude.',
    'Waves that the plate itself makes are not computed: a plate nearer to the surface than its breadth cannot be judged.',
    'Plates, tubes and joints are linear elastic in the solver but for contact and the stretching of thin panels; strength after buckling is not used.',
    'Conformance of the PDF with PDF/A-3 was not verified by a checker.',
    'The desktop program was tested through a double of its platform; its binary was never run where it was made.',
  ];
}
