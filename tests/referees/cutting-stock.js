// Solves cutting-stock problems with HiGHS over all patterns there are; prints as JSON the value of each one's linear
// relaxation and the least cost in whole boards. Reads a JSON file: [{lengths, demand, boards, costs, kerf}].
const fs = require('fs');

/** Every filling of a board to which no further piece can be added, with no more pieces than are asked for. */
function patterns(problem, board) {
  const { lengths, demand, kerf } = problem;
  const found = [];
  const counts = lengths.map(() => 0);
  const extend = (item, room) => {
    if (item === lengths.length) {
      const full = lengths.every((l, i) => counts[i] >= demand[i] || l + kerf > room);
      if (full && counts.some((c) => c > 0)) found.push([...counts]);
      return;
    }
    const most = Math.min(demand[item], Math.floor(room / (lengths[item] + kerf)));
    for (counts[item] = 0; counts[item] <= most; counts[item] += 1) {
      extend(item + 1, room - counts[item] * (lengths[item] + kerf));
    }
    counts[item] = 0;
  };
  extend(0, board + kerf + 1e-9);
  return found;
}

function program(problem, whole) {
  const columns = problem.boards.flatMap((board, b) => patterns(problem, board).map((counts) => ({ counts, cost: problem.costs[b] })));
  const sum = (terms) => (terms.length > 0 ? terms.join('\n + ') : '0 x0');
  const rows = problem.lengths.map((_, i) => ` r${i}: ${sum(columns
    .map((c, k) => (c.counts[i] > 0 ? `${c.counts[i]} x${k}` : ''))
    .filter((term) => term !== ''))} >= ${problem.demand[i]}`);
  return [
    'Minimize',
    ` obj: ${sum(columns.map((c, k) => `${c.cost} x${k}`))}`,
    'Subject To',
    ...rows,
    ...(whole ? ['General', ...columns.map((_, k) => ` x${k}`)] : []),
    'End',
  ].join('\n');
}

(async () => {
  const highs = await require('highs')();
  const problems = JSON.parse(fs.readFileSync(process.argv[2], 'utf8'));
  const answers = problems.map((problem) => {
    const value = (whole) => {
      const solved = highs.solve(program(problem, whole), { mip_rel_gap: 0, mip_abs_gap: 0, time_limit: 20 });
      return solved.Status === 'Optimal' ? solved.ObjectiveValue : null;
    };
    return { relaxed: value(false), whole: value(true) };
  });
  console.log(JSON.stringify(answers));
})();
