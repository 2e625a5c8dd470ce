/** Density of an anode's alloy, kg/m³. Source: DNV-RP-B401, from memory. */
export const anodeDensity = { aluminium: 2700, zinc: 7130 } as const;
