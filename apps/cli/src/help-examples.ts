/** Examples under `--help` of each verb; a test runs every one of them. */
export const EXAMPLES = {
  assess: `
Examples:
  chargewright assess examples/orifice-add.json
  chargewright assess examples/orifice-add.json --units metric
  chargewright assess examples/orifice-add.json --json`,
  saturation: `
Examples:
  chargewright saturation R-410A --pressure "118 psig"
  chargewright saturation R-407C --temperature "40 degF" --altitude "5000 ft"
  chargewright saturation propane --pressure "4.7 bar a" --json
  echo '{"refrigerant": "R-32", "temperature_K": 280}' | chargewright saturation --batch`,
  state: `
Examples:
  chargewright state R-410A --pressure "118 psig" --temperature "60 degF"
  chargewright state R-22 --pressure "69 psig" --quality 0.2 --json
  echo '{"refrigerant": "CO2", "pressure_Pa": 9e6, "temperature_K": 310}' | chargewright state --batch`,
  leak: `
Examples:
  chargewright leak R-407C --lost "20 %" --at "25 degC"
  chargewright leak R-448A --lost "40 %" --fill "20 %" --at "77 degF" --top-up-to "100 %" --json
  echo '{"refrigerant": "R-454B", "temperature_K": 298.15, "lost": 0.1}' | chargewright leak --batch`,
  list: `
Examples:
  chargewright list
  chargewright list R-32 R-454B --json
  echo '{"refrigerant": "R-290"}' | chargewright list --batch`,
} as const
