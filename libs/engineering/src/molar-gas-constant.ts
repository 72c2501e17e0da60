/** Molar gas constant R [J/(mol·K)], exact since the revision of the SI in 2019 (CODATA 2018). */
export const molarGasConstant = 8.314462618;
