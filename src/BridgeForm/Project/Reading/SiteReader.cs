namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>site</c>.</summary>
internal static class SiteReader
{
    public static SiteParameters Read(FileValues v) => new()
    {
        Span = v.Number("site.span"),
        Rise = v.Number("site.rise"),
        ReferenceTemperature = v.Number("site.reference_temperature"),
        Temperatures = [.. v.Items("site.temperatures").Select(v.Number).Order()],
        Ground = [.. v.Items("site.ground").Where(p => v.Good(p)).Select(p => new GroundPoint(v.Number(p + ".0"), v.Number(p + ".1")))],
        Water = v.NumberOrNull("site.water"),
        Freeboard = v.NumberOrNull("site.freeboard"),
        A = Support(v, "site.a"),
        B = Support(v, "site.b"),
    };

    private static SupportParameters Support(FileValues v, string path) => new()
    {
        Backstay = v.NumberOrNull(path + ".backstay.length") is { } length
            ? new BackstayParameters(length, v.Number(path + ".backstay.angle"), v.Text(path + ".backstay.saddle") is "sliding")
            : null,
        LandingLevel = v.NumberOrNull(path + ".landing.level"),
        LandingGap = v.NumberOrNull(path + ".landing.gap"),
    };
}
