using System.Text.Json;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes.Modes;
using BridgeForm.Trials;

namespace BridgeForm.Output.Report;

/// <summary>The parts of <c>ropes</c> beyond the design state: cut, stretch, supports, keepers, modes; all for one rope.</summary>
internal static class RopeworkReport
{
    /// <summary>Writes them into the open object.</summary>
    public static void Write(Utf8JsonWriter json, BridgeParameters parameters, RopeWork work)
    {
        ReportJson.Number(json, "fall_when_support_moves_25mm", work.MidSpanDropWhenSupportMoves);
        json.WritePropertyName("cut");
        Cut(json, work.Cut);
        RopeEndReport.Write(json, parameters, work);
        ReportJson.List(json, "stretch", work.Stretch, Stretch);
        ReportJson.List(json, "supports", work.Supports, Support);
        ReportJson.List(json, "keepers", work.Keepers, Keeper);
        ReportJson.List(json, "modes", work.Modes, Modes);
        ReportJson.List(json, "roll", work.Roll, Roll);
    }

    /// <summary>One entry of <c>remedies</c>.</summary>
    public static void Remedy(Utf8JsonWriter json, Remedy remedy)
    {
        json.WriteStartObject();
        json.WriteString("check", remedy.CheckId);
        json.WriteString("text", remedy.Text);
        json.WriteString("rope", remedy.Rope);
        ReportJson.Number(json, "length", remedy.Length);
        ReportJson.Number(json, "spacing", remedy.Spacing);
        json.WriteBoolean("search_ended", remedy.SearchEnded);
        json.WriteEndObject();
    }

    private static void Cut(Utf8JsonWriter json, RopeCut? cut)
    {
        if (cut is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        ReportJson.Number(json, "between_supports", cut.BetweenSupports);
        ReportJson.Number(json, "backstay_a", cut.BackstayA);
        ReportJson.Number(json, "backstay_b", cut.BackstayB);
        ReportJson.Number(json, "termination", cut.Termination);
        json.WriteString("termination_source", cut.TerminationSource);
        ReportJson.Number(json, "length", cut.Length);
        ReportJson.Number(json, "temperature_change", cut.TemperatureChange);
        ReportJson.Number(json, "take_up", cut.TakeUp);
        json.WriteEndObject();
    }

    private static void Stretch(Utf8JsonWriter json, StretchEnd end)
    {
        json.WriteStartObject();
        ReportJson.Number(json, "share", end.Share);
        ReportJson.Number(json, "take_up", end.TakeUp);
        ReportJson.Number(json, "pull_when_new", end.NewPull?.Tension);
        json.WriteString("pull_when_new_case", end.NewPull?.Case);
        ReportJson.Number(json, "sag", end.Shape?.Sag);
        ReportJson.Number(json, "move_down_mid", end.MidSpanDrop);
        ReportJson.Number(json, "over_ground", end.OverGround?.Room);
        json.WriteString("over_ground_case", end.OverGround?.Case);
        ReportJson.Number(json, "over_water", end.OverWater?.Room);
        json.WriteString("over_water_case", end.OverWater?.Case);
        ReportJson.List(json, "marks", end.Marks, (j, mark) => j.WriteNumberValue(ReportJson.Clean(mark.Unstressed)));
        ReportJson.List(json, "hoisting", end.Hoisting.Rows, RopeReport.Hoisting);
        json.WriteEndObject();
    }

    private static void Support(Utf8JsonWriter json, SupportPull pull)
    {
        json.WriteStartObject();
        json.WriteString("support", pull.Support);
        json.WriteString("case", pull.Case);
        ReportJson.Number(json, "tension", pull.Tension);
        ReportJson.Number(json, "horizontal", pull.Horizontal);
        ReportJson.Number(json, "vertical", pull.Vertical);
        ReportJson.Number(json, "backstay_pull", pull.Backstay?.Tension);
        ReportJson.Number(json, "post_vertical", pull.PostVertical);
        ReportJson.Number(json, "post_horizontal", pull.PostHorizontal);
        json.WriteEndObject();
    }

    private static void Keeper(Utf8JsonWriter json, KeeperForce force)
    {
        json.WriteStartObject();
        json.WriteString("frame", force.Frame);
        json.WriteString("case", force.Case);
        Along(json, force);
    }

    /// <summary>One frame in the case it stands under.</summary>
    public static void KeeperOfCase(Utf8JsonWriter json, KeeperForce force)
    {
        json.WriteStartObject();
        json.WriteString("frame", force.Frame);
        Along(json, force);
    }

    private static void Along(Utf8JsonWriter json, KeeperForce force)
    {
        ReportJson.Number(json, "load_along", force.LoadAlong);
        ReportJson.Number(json, "tension_difference", force.TensionDifference);
        json.WriteEndObject();
    }

    // Not how many times as heavy the weights could be: how many times as high they could stand.
    private static void Roll(Utf8JsonWriter json, RollState state)
    {
        json.WriteStartObject();
        json.WriteString("case", state.Case);
        json.WriteBoolean("hot_and_stretched", state.InHeat);
        ReportJson.Number(json, "height_factor", state.Factor is { } factor && double.IsFinite(factor.Value) ? factor.Value : null);
        json.WriteBoolean("to_one_side", state.Factor?.IsToOneSide ?? false);
        ReportJson.Number(json, "height_factor_deck_held_in_plan", state.HeldInPlan is { } held && double.IsFinite(held) ? held : null);
        json.WriteBoolean("rolls_over", state.RollsOver);
        json.WriteEndObject();
    }

    // Peak accelerations under one walker, null where the mode is too light for the method.
    private static void Walked(Utf8JsonWriter json, WalkedMode mode)
    {
        static double? Finite(double mass) => double.IsFinite(mass) ? mass : null;
        json.WriteStartObject();
        ReportJson.Number(json, "hz", mode.Hertz);
        json.WriteBoolean("sways_and_rolls", mode.IsCoupled);
        ReportJson.Number(json, "vertical_mass", Finite(mode.VerticalMass));
        ReportJson.Number(json, "lateral_mass", Finite(mode.LateralMass));
        ReportJson.Number(json, "vertical_peak", Finite(mode.VerticalMass) is null
            ? null
            : Footfall.Acceleration(Footfall.VerticalForce, Footfall.VerticalShare(mode.Hertz), mode.VerticalMass));
        ReportJson.Number(json, "lateral_peak", Finite(mode.LateralMass) is null
            ? null
            : Footfall.Acceleration(Footfall.LateralForce, Footfall.LateralShare(mode.Hertz), mode.LateralMass));
        json.WriteEndObject();
    }

    private static void Modes(Utf8JsonWriter json, RopeModes modes)
    {
        json.WriteStartObject();
        json.WriteString("case", modes.Case);
        ReportJson.Number(json, "vertical_symmetric_hz", modes.VerticalSymmetric);
        ReportJson.Number(json, "vertical_antisymmetric_hz", modes.VerticalAntisymmetric);
        ReportJson.Number(json, "lateral_hz", modes.Lateral);
        ReportJson.Number(json, "lateral_one_half_wave_hz", modes.LateralOneHalfWave);
        ReportJson.Number(json, "lateral_two_half_waves_hz", modes.LateralTwoHalfWaves);
        ReportJson.Number(json, "lateral_at_ropes_hz", modes.LateralAtRopes);
        ReportJson.Number(json, "string_first_hz", modes.StringFirst);
        ReportJson.Number(json, "string_second_hz", modes.StringSecond);
        ReportJson.Number(json, "irvine_symmetric_hz", modes.IrvineSymmetric);
        ReportJson.List(json, "walked", modes.Walked, Walked);
        json.WriteEndObject();
    }
}
