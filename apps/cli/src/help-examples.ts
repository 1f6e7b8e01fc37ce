/** Examples under `--help` of each verb; a test runs every one of them. */
export const EXAMPLES = {
  assess: `
Examples:
  chargewright assess examples/orifice-add.json
  chargewright assess examples/orifice-add.json --units metric --language es
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
  airflow: `
Examples:
  chargewright airflow heat --volts 240V --amps 28A --rise "21 degF" --altitude 5000ft --tons 3ton
  chargewright airflow traverse --width "20 in" --height "12 in"
  chargewright airflow traverse --diameter "10 in" --in m/s 2.9 3.4 3.8 3.7 3.5 3 3 3.5 3.8 3.9 3.4 2.9 --json
  chargewright airflow pressure-drop examples/service/coil-drops.csv --drop "0.22 inH2O" --air "72 degF"
  chargewright airflow fan-table examples/service/fan-table.csv --static "0.5 inH2O" --units metric`,
  compressor: `
Examples:
  chargewright compressor rating examples/service/compressor-coefficients.csv --suction "45 degF" --discharge "115 degF" --volts "222 V" --amps "11.2 A"
  chargewright compressor rating examples/service/compressor.json --refrigerant R-410A --suction "130 psig" --discharge "364 psig" --return-gas "60 degF"
  chargewright compressor rating examples/service/compressor-amps.csv --table "current A" --rated-superheat "20 degF" --rated-volts "230 V" --suction "45 degF" --discharge "115 degF" --amps "8.6 A" --json
  chargewright compressor rating examples/service/compressor-coefficients.csv --suction "45 degF" --discharge "115 degF" --watts "2600 W" --curve examples/service/system-power.csv --curve-of "power W" --outdoor "90 degF" --box "75 degF"
  chargewright compressor supply "462 V" "463 V" "455 V" --nominal "460 V"`,
  evacuation: `
Examples:
  chargewright evacuation examples/service/vacuum-levels.csv --resolution "1 micron"
  chargewright evacuation examples/service/vacuum-rises.csv --coldest "50 degF" --json
  chargewright evacuation examples/service/vacuum-rises.csv --criterion habit --units metric`,
  'pressure-test': `
Examples:
  chargewright pressure-test "0 h, 300 psig, 90 degF" "12 h, 283 psig, 60 degF" --gauge-step "1 psi" --thermometer-step "0.1 degF"
  chargewright pressure-test "0 h, 20.7 bar g, 32 °C" "1 h, 20.1 bar g, 31 °C" "24 h, 17 bar g, 22 °C" --units metric --json`,
  cylinders: `
Examples:
  chargewright cylinders examples/service/cylinder-book.json
  chargewright cylinders examples/service/cylinder-book.json --units metric --json`,
  'leak-rate': `
Examples:
  chargewright leak-rate examples/service/leak-history-r22.json
  chargewright leak-rate examples/service/leak-history-r410a.json --units metric --json`,
  'weigh-in': `
Examples:
  chargewright weigh-in examples/line-set-weigh-in.json
  chargewright weigh-in --refrigerant R-410A --metering-device thermostatic --nameplate-charge "6 lb 4 oz" --line-length "45 ft" --included-line-length "15 ft" --liquid-line-tube 3/8
  chargewright weigh-in --refrigerant R-410A --metering-device thermostatic --nameplate-charge "6 lb 4 oz" --accessory "accumulator: 90 in³, 10 %" --scale-step "0.5 oz" --hose "60 in, 0.2 in"
  chargewright weigh-in --refrigerant R-134a --metering-device capillary --nameplate-charge "12 oz" --cylinder-temperature "85 degF" --cylinder-scale "70 degF"
  chargewright weigh-in examples/capillary-weigh-in.json --units metric --json`,
  report: `
Examples:
  chargewright report examples/orifice-add.json -o record.pdf
  chargewright report examples/step-by-step.json -o record.pdf --csv record.csv --units metric
  chargewright report examples/glide-r407c.json --json
  chargewright report examples/orifice-add.json -o record.pdf --evacuation examples/service/vacuum-rises.csv --cylinders examples/service/cylinder-book.json`,
  twin: `
Examples:
  chargewright twin examples/service/system.json --outdoor "95 degF" --return "80 degF" --wet-bulb "67 degF"
  chargewright twin examples/service/system.json --charge "85 %" --what-if outdoor --units metric
  chargewright twin examples/orifice-add.json --what-if charge --json`,
  chart: `
Examples:
  chargewright chart examples/service/system.json
  chargewright chart examples/service/system.json --family dry-bulb --humidity "50 %" --csv chart.csv --svg chart.svg
  chargewright chart examples/valve-subcooling-add.json --measure subcooling --units metric --json`,
  diagnose: `
Examples:
  chargewright diagnose examples/orifice-starved-coil.json
  chargewright diagnose examples/valve-dirty-condenser.json --units metric --json`,

  dose: `
Examples:
  chargewright dose examples/orifice-add.json
  chargewright dose examples/orifice-recover.json --units metric --json`,
  bench: `
Examples:
  chargewright bench
  chargewright bench --seed 7 --device thermostatic
  echo 'look' | chargewright bench --seed 7 --units metric
  echo '{"kind": "debrief"}' | chargewright bench --seed 7 --json`,
} as const
