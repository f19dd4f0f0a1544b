using BridgeForm.Checks;
using BridgeForm.Checks.Register;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>
/// Every check is broken on purpose: for every status that docs/checks.md lists there is a case that gives exactly it; beside
/// a limit that is a number, one just on each side, with demand and limit by hand.
/// </summary>
public sealed class CatalogueTests
{
    // A case beside a limit lies within this share of it.
    private const double Beside = 1e-3;

    // A limit of nothing has no shares: a millimetre of a metre.
    private const double BesideNothing = 1e-3;

    // A ratio that comes out at its limit by two ways.
    private const double Rounding = 1e-9;

    /// <summary>Checks that can hold and yet compare no number with a limit, and why. Their results never have a ratio.</summary>
    private static readonly Dictionary<string, string> s_unnumbered = new(StringComparer.Ordinal)
    {
        ["copper-on-zinc"] = "yes or no",
        ["fasteners-in-treated-wood"] = "yes or no",
        ["wood-outdoors"] = "counts stocks that rot; none may be",
        ["wood-values"] = "counts values; none may be",
        ["section-on-sale"] = "counts sections; none should be",
        ["rope-on-sale"] = "yes or no",
        ["mild-inputs"] = "counts values; none may be",
        ["cases-solved"] = "counts what has no shape; none may be",
        ["rope-termination"] = "kind of end and rope",
    };

    public static TheoryData<string> Cases => [.. ProofCase.All.Keys.Order(StringComparer.Ordinal)];

    public static TheoryData<string> Ids => [.. AllChecks.Declared.Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_gives_what_it_is_marked_with(string name)
    {
        var proves = ProofCase.All[name].Proves;
        var proof = ProofCase.All[name].Run();
        Assert.Equal((proves.Id, proves.Status), (proof.Check.Id, proof.Check.Status));
        var declared = AllChecks.Declared.Single(d => d.Id == proves.Id);
        Assert.Contains(proves.Status, declared.Statuses);
        Near(proof.Demand, proof.Check.Demand, proof);
        Assert.Equal(proof.Capacity is null, proof.Check.Capacity is null);
        Near(proof.Capacity ?? 0, proof.Check.Capacity ?? 0, proof);
        Assert.All(proof.Says, said => Assert.Contains(said, proof.Check.Detail, StringComparison.Ordinal));
        if (IsOnlyStated(declared))
        {
            Assert.NotEmpty(proof.Says);
        }

        if (s_unnumbered.ContainsKey(proves.Id))
        {
            Assert.Null(proof.Check.Ratio);
        }

        if (proof.Check.Ratio is { } ratio)
        {
            Assert.True(IsRatio(ratio, proof), $"ratio {ratio} is neither demand over limit nor limit over demand");
        }

        if (proves.Side != Side.Far)
        {
            IsBeside(proves, proof);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_status_has_a_case_and_every_limit_two(string id)
    {
        var declared = AllChecks.Declared.Single(d => d.Id == id);
        var marks = ProofCase.All.Values.Select(c => c.Proves).Where(p => p.Id == id).ToList();
        List<string> missing =
            [.. declared.Statuses.Where(s => marks.TrueForAll(m => m.Status != s)).Select(s => $"a case that gives {s}")];
        if (!IsOnlyStated(declared) && !s_unnumbered.ContainsKey(id))
        {
            missing.AddRange(
                ((Side[])[Side.Within, Side.Beyond]).Where(s => marks.TrueForAll(m => m.Side != s)).Select(
                    s => $"a case just {s} the limit"));
        }

        Assert.Equal([], missing);
    }

    [Fact]
    public void Cases_are_marked_with_declared_checks()
    {
        var ids = AllChecks.Declared.Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], ProofCase.All.Values.Select(c => c.Proves.Id).Concat(s_unnumbered.Keys).Where(id => !ids.Contains(id)).Distinct());
    }

    // What is only stated may still fail where there is no end to it.
    private static bool IsOnlyStated(DeclaredCheck check) =>
        check.Statuses is [CheckStatus.Engineer] || check.Id is "keeper-uplift-load" or "guard-line-load";

    private static void Near(double byHand, double given, Proof proof) =>
        Assert.True(
            Math.Abs(byHand - given) <= proof.Error * Math.Max(Math.Abs(byHand), double.Epsilon), $"by hand {byHand}, given {given}");

    private static bool IsRatio(double ratio, Proof proof)
    {
        var (demand, limit) = (proof.Demand, proof.Capacity ?? double.NaN);
        return ((double[])[demand / limit, limit / demand]).Any(r => Math.Abs(ratio - r) <= 2 * proof.Error * r);
    }

    private static void IsBeside(ProvesAttribute proves, Proof proof)
    {
        var limit = (proof.Capacity ?? proof.Limit)!.Value;
        var off = Math.Abs(proof.Check.Demand - limit) / (limit > 0 ? limit : 1);
        Assert.InRange(off, 0, limit > 0 ? Beside : BesideNothing);
        Assert.Equal(
            proves.Side == Side.Within, proof.Check.Ratio is { } ratio ? ratio <= 1 + Rounding : proves.Status == CheckStatus.Pass);
    }
}
