using System.Globalization;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Runs of the command line, killed while they put their files in place.</summary>
internal static class KillFuzz
{
    /// <summary>Runs until the time or the count is used up; 1 when something was found.</summary>
    public static int Run(FuzzRun run)
    {
        var isAllRight = true;
        var grounds = Enum.GetValues<KillGround>();
        var outcomes = grounds.ToDictionary(g => g, _ => new List<KillOutcome>());
        var isCounted = KillTrial.CanCount();
        var trials = grounds.ToDictionary(g => g, g => new KillTrial(g, isCounted));
        foreach (var seed in run.Seeds())
        {
            var ground = grounds[(int)((uint)seed % grounds.Length)];
            var share = new Random(seed).NextDouble();
            var outcome = trials[ground].Kill(share);
            outcomes[ground].Add(outcome);
            if (!outcome.IsRight)
            {
                isAllRight = false;
                Console.WriteLine(
                    string.Create(CultureInfo.InvariantCulture, $"seed {seed}, {ground}, at {share:0.000} of the commit: {outcome}"));
            }
        }

        foreach (var (ground, all) in outcomes)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{ground}: {all.Count} kills, {all.Count(o => o.IsCut)} of them within a commit of {trials[ground].Window}, "
                    + $"{all.Count(o => o.IsWholeAtOnce)} whole at once, {all.Count(o => o.IsWholeAfterwards)} whole after the next run, "
                    + $"{all.Count(o => o.IsNew)} of the new design, {all.Count(o => !o.AreUsersFilesSame)} with a user's file changed"));
            trials[ground].Dispose();
        }

        return isAllRight ? 0 : 1;
    }
}
