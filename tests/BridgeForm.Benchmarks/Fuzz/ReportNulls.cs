using System.Text.Json;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Nulls of report.json where a number must be.</summary>
internal static class ReportNulls
{
    // What says by null that there is none: no limit to compare with, no ground line, no price, no clip, no failure; no tilt of
    // what rolls over, no share where the case has no load of its own, no factor where nothing tips; no
    // mass that moves, no wind that turns over, no place to rest; no chain where no table has its lengths, no backstay to lie behind.
    private static readonly HashSet<string> MayBeNull = new(StringComparer.Ordinal)
    {
        ".checks[].capacity", ".checks[].ratio",
        ".ropes.cut.termination", ".ropes.cut.length", ".ropes.cut.take_up", ".ropes.supports[].backstay_pull",
        ".ropes.chain", ".ropes.chain.take_in", ".ropes.chain.let_out", ".ropes.tape", ".ropes.tape.cut_length",
        ".ropes.tape.least_behind_saddle",
        ".ropes.stretch[].over_ground", ".ropes.stretch[].over_ground_case", ".ropes.stretch[].over_water",
        ".ropes.stretch[].over_water_case", ".stock_jobs[].spare_length",
        ".cases[].cross_slope_deg", ".cases[].largest_share", ".ropes.roll[].height_factor",
        ".ropes.roll[].height_factor_deck_held_in_plan",
        ".cases[].over_ground", ".cases[].over_water", ".cases[].failure",
        ".grown_cases[].cross_slope_deg", ".grown_cases[].largest_share",
        ".grown_cases[].over_ground", ".grown_cases[].over_water", ".grown_cases[].failure",
        ".remedies[].rope", ".remedies[].length", ".remedies[].spacing",
        ".ropes.modes[].vertical_antisymmetric_hz", ".ropes.modes[].lateral_two_half_waves_hz",
        ".ropes.modes[].walked[].vertical_mass", ".ropes.modes[].walked[].lateral_mass",
        ".ropes.modes[].walked[].vertical_peak", ".ropes.modes[].walked[].lateral_peak",
        ".wind.lifts_upright_at", ".wind.states[].stands_to", ".wind.states[].turns_over_at",
        ".wind.states[].side_force", ".wind.states[].sideways", ".wind.states[].roll_deg", ".wind.states[].roll_frame",
        ".wind.states[].keeper_lift", ".wind.states[].keeper_frame", ".wind.states[].max_tension",
        ".point_loads[].cross_slope_at_most_deg", ".point_loads[].share_at_most",
        ".ropes.stretch[].sag", ".ropes.stretch[].move_down_mid", ".pieces[].holes[].depth", ".stock[].cost", ".stock[].router_file",
        ".stock[].not_routable", ".hardware[].quantity",
    };

    // A case in which no shape of the ropes was found, or no tilt, has a sentence or a word for it and none of these.
    private static readonly HashSet<string> OfState = new(StringComparer.Ordinal)
    {
        "horizontal", "max_tension", "sag", "move_down_mid", "cross_slope_first_order_deg", "reactions",
    };

    /// <summary>Paths of nulls that may not be there.</summary>
    public static IEnumerable<string> In(string report)
    {
        using var json = JsonDocument.Parse(report);
        return [.. Walk(json.RootElement, "").Distinct(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Walk(JsonElement element, string path) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject()
            .Where(p => !(path is ".cases[]" or ".grown_cases[]" && OfState.Contains(p.Name) && HasNoState(element)))
            .SelectMany(p => Walk(p.Value, $"{path}.{p.Name}")),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Walk(e, path + "[]")),
        JsonValueKind.Null when !MayBeNull.Contains(path) => [$"null in report.json at {path}"],
        _ => [],
    };

    private static bool HasNoState(JsonElement stated) =>
        stated.GetProperty("failure").ValueKind == JsonValueKind.String
        || stated.GetProperty("rolls_over").ValueKind == JsonValueKind.True;
}
