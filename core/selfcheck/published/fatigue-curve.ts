/**
 * S-N curves as a check takes them in, from their printed constants. Parts no thicker than 25 mm have no size effect.
 * log a of W3 and F free to corrode: DNV-RP-C203 (2016), Table 2-4; a category of EN 1993-1-9 stands at 2 million cycles.
 */
const thin = { t_d: 0.008, t_ref: 0.025, k_x: 0.25 };

export const freeToCorrode = (logA: number) => ({ ...thin, S_k: 1e6, N_k: 10 ** logA, m_1: 3, m_2: 3 });

export const category = (MPa: number, m: number) => ({ ...thin, S_k: MPa * 1e6, N_k: 2e6, m_1: m, m_2: m });
