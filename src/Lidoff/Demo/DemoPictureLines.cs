using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Demo;

/// <summary>What is noted of the pictures themselves, and what was pointed at and measured in them.</summary>
internal static class DemoPictureLines
{
    private const string Graticule = "SCALE";

    // Both holes, and vias that no part covers on either side.
    private static readonly string[] Landmarks = ["H1", "H2", "V1", "V3", "V5", "V7", "V10", "V16"];

    // Pictures of the whole main board of one specimen: with landmarks they lie on one another, both sides.
    private static readonly string[] OnOneBoard =
    [
        "brindle-main-top.png", "brindle-main-bottom.png", "brindle-main-top-tilted.png", "brindle-main-bottom-tilted.png", "brindle-main-top-raking.png", "brindle-main-bottom-raking.png",
    ];

    /// <summary>Each picture with its side and light, and the scale of those that have a known length in them.</summary>
    public static IEnumerable<string> All() => BrindleShots.All.SelectMany(Of);

    /// <summary>A spot pointed at in a picture.</summary>
    public static string Spot(string picture, string spot, string kind, string role, string why = "")
    {
        var shot = BrindleShots.Named(picture);
        var because = why.Length > 0 ? $",\"why\":\"{why}\"" : "";
        return $$"""{"kind":"spot","spot":"{{spot}}","specimen":"{{shot.Specimen}}","picture":"{{picture}}","point":{{DemoHand.Clicked(Part(shot, spot).Centre, picture + spot)}},"role":"{{role}}","class":"{{kind}}"{{because}}}""";
    }

    /// <summary>Length and width of a part's top, clicked in its close-up or in another picture.</summary>
    public static IEnumerable<string> Sides(string spot, string picture)
    {
        var shot = BrindleShots.Named(picture);
        var part = Part(shot, spot);
        yield return Length(shot, spot, "length", part.Left, part.Right, part.Part.HeightMm);
        yield return Length(shot, spot, "width", part.Top, part.Bottom, part.Part.HeightMm);
    }

    /// <summary>The length of a part's top alone.</summary>
    public static string Long(string spot, string picture) => Sides(spot, picture).First();

    /// <summary>Where a pad lies in a picture.</summary>
    public static string Pad(string pad, string picture, string side, string role)
    {
        var shot = BrindleShots.Named(picture);
        return $$"""{"kind":"pad","pad":"{{pad}}","side":"{{side}}","role":"{{role}}","picture":"{{picture}}","point":{{DemoHand.Clicked(Part(shot, pad).Centre, picture + pad)}}}""";
    }

    /// <summary>Where a pin of a two-row or four-row chip lies in a picture: counted against the clock from the mark at pin 1.</summary>
    public static string Pin(string spot, int pin, string picture, string side, string name, string role)
    {
        var shot = BrindleShots.Named(picture);
        return $$"""{"kind":"pad","pad":"{{pin}}","spot":"{{spot}}","name":"{{name}}","side":"{{side}}","role":"{{role}}","picture":"{{picture}}","point":{{DemoHand.Clicked(PinPlace(Part(shot, spot), pin), picture + spot + pin)}}}""";
    }

    private static IEnumerable<string> Of(Shot shot)
    {
        var side = shot.Side.Length > 0 ? $",\"side\":\"{shot.Side}\"" : "";
        yield return $$"""{"kind":"picture","file":"{{shot.Name}}","specimen":"{{shot.Specimen}}"{{side}},"light":"{{shot.Light}}","zoom":"{{shot.Zoom}}"}""";
        var truth = shot.Truth;
        if (shot.About.Length > 0)
        {
            var scale = truth.Parts.Single(part => part.Part.Spot == Graticule);
            yield return Scale(shot, scale.Left, scale.Right, scale.Part.LengthMm, 0.005);
        }
        else if (shot.Scene.Mask != MaskColour.None)
        {
            yield return Scale(shot, truth.Outline[0], truth.Outline[1], shot.Scene.BoardWidthMm, 0.03);
        }

        if (!OnOneBoard.Contains(shot.Name)) yield break;
        foreach (var name in Landmarks)
        {
            yield return $$"""{"kind":"landmark","landmark":"{{name}}","specimen":"{{shot.Specimen}}","picture":"{{shot.Name}}","point":{{DemoHand.Clicked(Part(shot, name).Centre, shot.Name + name)}},"u_px":0.8}""";
        }
    }

    private static string Scale(Shot shot, PicturePoint from, PicturePoint to, double mm, double u) => Text(
        $$"""{"kind":"scale","picture":"{{shot.Name}}","from":{{DemoHand.Clicked(from, shot.Name + " from")}},"to":{{DemoHand.Clicked(to, shot.Name + " to")}},"length_mm":{{mm}},"u_mm":{{u}},"camera_distance_mm":{{shot.Scene.CameraDistanceMm}}}""");

    private static string Length(Shot shot, string spot, string what, PicturePoint from, PicturePoint to, double height)
    {
        var key = shot.Name + spot + what;
        return Text($$"""{"kind":"length","specimen":"{{shot.Specimen}}","picture":"{{shot.Name}}","spot":"{{spot}}","what":"{{what}}","from":{{DemoHand.Clicked(from, key + " from")}},"to":{{DemoHand.Clicked(to, key + " to")}},"height_mm":{{height}}}""");
    }

    private static PicturePoint PinPlace(TruePart part, int pin)
    {
        Guard.That(part.Part.EndLeads == 0, "a chip without leads at its ends");
        var each = part.Part.Ways / part.Part.LeadSides;
        var (row, place) = ((pin - 1) / each, (pin - 1) % each);
        // Corners clockwise from the part's own top left. Two rows stand below and above; four begin at the left.
        var corners = part.Part.LeadSides == 4 ? new[] { 0, 3, 2, 1, 0 } : [3, 2, 1, 0];
        var (from, to) = part.Part.LeadSides == 4 ? (part.Corners[corners[row]], part.Corners[corners[row + 1]]) : (part.Corners[corners[row * 2]], part.Corners[corners[(row * 2) + 1]]);
        var along = part.Part.LengthMm <= 0 ? 0.5 : 0.5 + ((place - ((each - 1) / 2.0)) * part.Part.PitchMm / part.Part.LengthMm);
        return new(from.X + ((to.X - from.X) * along), from.Y + ((to.Y - from.Y) * along));
    }

    private static TruePart Part(Shot shot, string spot) => shot.Truth.Parts.Single(part => part.Part.Spot == spot);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
