/** An invented log of a system that starts, drifts and settles: a row every ten seconds for twenty minutes. */
export function inventedLog(): string {
  const rows = Array.from({ length: 121 }, (_, i) => {
    const t = 10 * i
    const towards = (from: number, to: number, lag_s: number) => to + (from - to) * Math.exp(-t / lag_s)
    const noise = (size: number) => size * Math.sin(i * 2.7)
    const cells = [
      towards(190, 112, 60) + noise(0.4),
      towards(190, 330, 90) + noise(0.8),
      towards(95, 64.5, 150) + noise(0.1),
      towards(95, 99, 150) + noise(0.1),
      95 + noise(0.2),
      78 + noise(0.1),
      i,
    ]
    const clock = `12:${String(Math.floor(t / 60)).padStart(2, '0')}:${String(t % 60).padStart(2, '0')}`
    return [`2026-07-01;${clock}`, ...cells.map((cell) => cell.toFixed(2).replace('.', ','))].join(';')
  })
  const head = 'Date;Time;Suction pressure;Liquid pressure;Suction line;Liquid line;Outdoor air;Return air;Counter'
  const units = ';;psig;psig;°F;°F;°F;°F;'
  return ['Invented logger', head, units, ...rows].join('\r\n')
}
