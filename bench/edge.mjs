// Times one edge's pace in the WebAssembly engine, as the page asks for it: the first answer, the fifth and the median,
// for the first 128 samples and for 1024. Runs in node, in a worker and in a page alike.

/** `test` and `edge` are the requests' parts. Returns [{samples, first, fifth, median}], in ms. */
export function timeEdge(engine, test, edge, rounds = 9) {
  return [128, 1024].map((samples) => {
    const calibration = JSON.parse(engine.ask("fold_test", JSON.stringify({ ...test, samples })).text).calibration;
    const request = JSON.stringify({ calibration, edge });
    const times = [];
    for (let i = 0; i < rounds; i += 1) {
      const begin = performance.now();
      const answer = engine.ask("pace", request);
      times.push(performance.now() - begin);
      if (!answer.ok) throw new Error(answer.text);
    }
    const sorted = [...times].sort((a, b) => a - b);
    return { samples, first: times[0], fifth: times[4], median: sorted[Math.floor(rounds / 2)], least: sorted[0] };
  });
}

/** One line a count of samples. */
export function printed(where, times) {
  return times.map(
    ({ samples, first, fifth, median, least }) =>
      `  ${where}, ${samples} samples, everything the page shows of it: ` +
      `first ${first.toFixed(0)} ms, fifth ${fifth.toFixed(0)} ms, median ${median.toFixed(0)} ms, least ${least.toFixed(0)} ms`,
  );
}
