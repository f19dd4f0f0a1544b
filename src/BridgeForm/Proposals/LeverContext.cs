using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>What goes along when a value moves.</summary>
/// <param name="values">What the file says.</param>
/// <param name="mayFollow">Whether a key may change along with another one.</param>
internal sealed class LeverContext(FileValues values, Func<string, bool> mayFollow)
{
    private const string BaseLength = "frames.base.length";
    private const string ChannelWidth = "frames.channel.width";
    private const string BraceFoot = "frames.brace.foot";

    /// <summary>Sections on sale for a part, and the rope's sizes on sale.</summary>
    public ImmutableArray<RopeProperties> Ropes(BridgeParameters p) =>
        values.Find("ropes.type.diameter") is { Given: true } ? [] : Yard.Ropes(p.Ropes);

    /// <summary>Whether the file's own text stands in the way of what a rule would choose.</summary>
    public bool IsWritten(string path) => values.Given(path);

    /// <summary>A change of a distance across, and the base as much longer where the file writes its length.</summary>
    public ImmutableArray<KeyChange> WithBase(BridgeParameters p, double metres, string path, double longer)
    {
        var change = new KeyChange(path, Written.Length(p.Units, metres));
        var step = Written.Coarse(p.Units);
        return IsWritten(BaseLength) && mayFollow(BaseLength)
            ? [change, new KeyChange(BaseLength, Written.Length(p.Units, Rounding.Up(p.Frames.Base.Length + longer, step)))]
            : [change];
    }

    /// <summary>Another rope; channels that the file writes as a width keep their clearance.</summary>
    public ImmutableArray<KeyChange> WithRope(BridgeParameters p, RopeProperties rope)
    {
        var changes = ImmutableArray.CreateBuilder<KeyChange>();
        changes.Add(new KeyChange("ropes.type", rope.Name));
        var channel = p.Frames.Channel;
        if (IsWritten(ChannelWidth) && mayFollow(ChannelWidth))
        {
            var width = Rounding.Up(channel.Width + rope.Diameter - p.Ropes.Rope.Diameter, Written.Finest(p.Units));
            changes.Add(new KeyChange(ChannelWidth, Written.Length(p.Units, width)));
        }

        return changes.ToImmutable();
    }

    /// <summary>The brace's foot moved out with the post's.</summary>
    public ImmutableArray<KeyChange> BraceAlong(BridgeParameters p, double by) =>
        values.Given("frames.brace.length") || !mayFollow(BraceFoot)
            ? []
            : [.. Standing(p, Rounding.Up(p.Frames.Brace.Foot + by, Written.Fine(p.Units)))];

    // The foot, and a base on which it stands where the file writes the base's length.
    private IEnumerable<KeyChange> Standing(BridgeParameters p, double foot)
    {
        yield return new KeyChange(BraceFoot, Written.Length(p.Units, foot));
        var (step, least) = (Written.Coarse(p.Units), (2 * foot) + Written.Coarse(p.Units));
        if (IsWritten(BaseLength) && mayFollow(BaseLength) && p.Frames.Base.Length < least)
        {
            yield return new KeyChange(BaseLength, Written.Length(p.Units, Rounding.Up(least, step)));
        }
    }

    /// <summary>Another brace; its inner edge stays where it is.</summary>
    public ImmutableArray<KeyChange> WithBrace(BridgeParameters p, Section section)
    {
        var wider = Math.Max(0, (section.Width - p.Frames.Brace.Section.Width) / Elementary.Cos(p.Frames.Brace.Lean));
        var nearest = Nearest(p.Frames.Post, p.Frames.Brace, section, p.Units) - p.Frames.Brace.Foot;
        var brace = new KeyChange("frames.brace.section", section.Name);
        return wider < Tolerances.RoundOff && nearest <= 0 ? [brace] : [brace, .. BraceAlong(p, Math.Max(wider, nearest))];
    }

    // A step further out than where a brace's inner edge would be cut away.
    private static double Nearest(PostParameters post, BraceParameters brace, Section section, UnitSystem units)
    {
        var edge = section.Width * (Elementary.Tan(brace.Lean) + (1 / Elementary.Tan(post.Lean + brace.Lean)));
        return BraceGeometry.FromLength(post, brace.Lean, edge).Foot + (2 * Written.Fine(units));
    }

    /// <summary>Another post; the brace's foot keeps its distance from it.</summary>
    public ImmutableArray<KeyChange> WithPost(BridgeParameters p, Section section)
    {
        var wider = (section.Width - p.Frames.Post.Section.Width) / Elementary.Cos(p.Frames.Post.Lean);
        var wide = p.Frames.Post with { Section = section };
        var foot = Rounding.Up(
            Math.Max(p.Frames.Brace.Foot + wider, Nearest(wide, p.Frames.Brace, p.Frames.Brace.Section, p.Units)), Written.Fine(p.Units));
        var post = new KeyChange("frames.post.section", section.Name);
        return values.Given("frames.brace.length") || !mayFollow(BraceFoot) || Math.Abs(wider) < Tolerances.RoundOff
            ? [post]
            : [post, .. Standing(p, foot)];
    }
}
