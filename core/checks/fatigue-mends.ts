/** What makes each detail live longer, by its check: what to change, the surest first. */
export const fatigueMends: Readonly<Record<string, string>> = {
  'fatigue-weld-root':
    'A thicker throat (stress falls in proportion, life with its third power or more), a smaller panel field, or bolts.',
  'fatigue-weld-toe':
    'A thicker panel, a smaller field, or a ground or peened toe where the code that is used lets that count.',
  'fatigue-weld-corner':
    'Lap the panel past the corner radius (a heel then takes the moment), bolt it, or take a smaller panel field.',
  'fatigue-weld-end':
    'Stop welding to this tube (bolts, or sides on the other tubes), a deeper tube or thicker wall, a ground transverse end, or an attachment point that bends the tube less.',
  'fatigue-weld-intermittent': 'A continuous weld.',
  'fatigue-weld-plug': 'No plugs where the panel bends most, a wider pitch, a thicker panel or a smaller field.',
  'fatigue-weld-plug-shear': 'A closer pitch or larger plugs, a thicker panel (it pulls less), or no plugs.',
  'fatigue-plate-edge':
    'A thicker panel, a smaller field, no holes or larger ones away from where the panel bends most.',
  'fatigue-bolt-hole-panel':
    'Slip-resistant bolts (a better class), a thicker panel, a smaller field, or a wider pitch.',
  'fatigue-bolt-hole-tube':
    'Studs or pads instead of holes, bolts away from the most bent length, a deeper tube or thicker wall.',
  'fatigue-bolt-tension': 'More or larger bolts, a stiffer panel (less prying), or a preload that is kept and shown.',
  'fatigue-bolt-shear': 'Slip-resistant bolts: friction then carries what turns round.',
  'fatigue-crossing-toe':
    'Equal widths, thicker walls or a collar plate lower the stress at the toe; else analyse the joint as shells with its welds, or test it.',
  'fatigue-crossing-root': 'A thicker throat, full penetration, or attachment points that bend the cross tubes less.',
  'fatigue-eye-foot': 'A longer or thicker foot, or an eye that faces its leg.',
  'fatigue-eye-foot-bolts':
    'More or larger bolts, a thicker foot plate with its bolts nearer to the eye (less prying), a lower eye, or weld the eye to the tube.',
  'fatigue-eye-root': 'Full penetration (no root to crack), a thicker throat or a longer foot.',
  'fatigue-eye-hole': 'A wider or thicker eye, a closer pin, or a bushing.',
  'fatigue-eye-on-tube':
    'Put the eye at a crossing or where the tube bends less, shorten its foot, or take a deeper tube.',
  'fatigue-sealed-wall':
    'Let the tube flood (vent and drain), a thicker wall, or a round tube: its wall is pressed and not bent.',
};
