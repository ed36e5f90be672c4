namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>
/// Every picture of the demo, in the order in which it was taken. What is true of them stands in their scenes: sizes, marks, places.
/// Pictures stay at or below 0.7 million pixels, so that the whole set is rendered within seconds.
/// </summary>
public static class BrindleShots
{
    private const string Legend = "INVENTED - BRINDLE BY THE OTTERMILL WORKS - RENDERED";

    /// <summary>Accelerometer of specimen B, at the spot where A has another.</summary>
    public static IReadOnlyList<string> OtherAccelerometer { get; } = ["343B", "#204", "5120"];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Shot> All { get; } = [.. Device(), .. Boards(), .. Closes(), .. Second()];

    /// <summary>The picture of a name.</summary>
    public static Shot Named(string name) => All.Single(shot => shot.Name == name);

    private static IEnumerable<Shot> Device()
    {
        yield return Whole("closed-top", "other", WholeDevice.ClosedTop());
        yield return Whole("closed-back", "other", WholeDevice.ClosedBack());
        yield return Whole("closed-edge", "edge", WholeDevice.Edge());
        yield return Whole("seam", "edge", WholeDevice.Edge() with { Seed = 41, LookAt = (20, 21.7), PxPerMm = 45, Light = Lighting.RakingTop, Uneven = 0.2 }, "low, from above");
        yield return Whole("charging", "other", WholeDevice.Charging());
        yield return Whole("opened", "other", WholeDevice.Opened());
        yield return Whole("cell-print", "other", WholeDevice.CellPrint());
        yield return Whole("cell-out", "other", WholeDevice.CellOut());
        yield return Whole("cable-unplugged", "other", WholeDevice.Opened(cable: false));
        yield return Whole("cable-flat", "other", WholeDevice.CableFlat());
        yield return Whole("stiffener", "other", WholeDevice.CableFlat() with { Seed = 42, LookAt = (12, 22), PxPerMm = 27, Light = Lighting.RakingLeft }, "low, from the left");
        yield return Whole("spread", "other", WholeDevice.Spread());
    }

    private static IEnumerable<Shot> Boards()
    {
        var (main, mainBack, lamp, lampBack) = (Board(Brindle.MainTop()), Board(Brindle.MainBottom()), Board(Brindle.LampTop()), Board(Brindle.LampBottom()));
        yield return Of("main-top", "A", "top", "flat", "board", main);
        yield return Of("main-bottom", "A", "bottom", "flat", "board", mainBack);
        yield return Of("lamp-top", "A", "top", "flat", "small board", lamp);
        yield return Of("lamp-bottom", "A", "bottom", "flat", "small board", lampBack);
        yield return Of("main-top-tilted", "A", "top", "flat, board leaning 12 degrees", "board, leaning", main with { Seed = 51, TiltDegrees = 12, Uneven = 0.25, BlurPx = 0.9 });
        yield return Of("main-bottom-tilted", "A", "bottom", "flat, board leaning 10 degrees", "board, leaning", mainBack with { Seed = 52, TiltDegrees = 10, Uneven = 0.25, BlurPx = 0.9 });
        yield return Of("main-top-raking", "A", "top", "low, from the left", "board", main with { Seed = 53, Light = Lighting.RakingLeft, Uneven = 0.4 });
        yield return Of("main-bottom-raking", "A", "bottom", "low, from above", "board", mainBack with { Seed = 54, Light = Lighting.RakingTop, Uneven = 0.4 });
        yield return Of("main-top-phone", "A", "top", "window, board turned in the picture", "phone", main with { Seed = 55, TurnDegrees = 7, PxPerMm = 20, BlurPx = 1.3, Grain = 2.4, Uneven = 0.5, Width = 800, Height = 600, Orientation = 6, Legend = Legend });
        yield return Of("lamp-top-raking", "A", "top", "low, from the left", "small board", lamp with { Seed = 56, Light = Lighting.RakingLeft, Uneven = 0.4 });
        yield return Of("lamp-bottom-tilted", "A", "bottom", "flat, board leaning 12 degrees", "small board, leaning", lampBack with { Seed = 57, TiltDegrees = 12, Uneven = 0.2 });
    }

    private static IEnumerable<Shot> Closes()
    {
        var (main, mainBack, lamp, lampBack) = (Brindle.MainTop(), Brindle.MainBottom(), Brindle.LampTop(), Brindle.LampBottom());
        foreach (var (board, spots) in new[] { (main, new[] { "U1", "U2", "U3", "U5", "U6", "U7" }), (mainBack, ["U8", "Q1"]), (lamp, ["U4"]) })
        {
            foreach (var spot in spots)
            {
                foreach (var shot in CloseUp.Lights(board, spot, "A")) yield return shot with { Scene = shot.Scene with { Legend = Legend } };
            }
        }

        foreach (var (board, spot) in new[] { (main, "X1"), (main, "ANT1"), (main, "G1"), (mainBack, "M1"), (lampBack, "OM1"), (lamp, "D1") })
        {
            var shot = CloseUp.Flat(board, spot, "A");
            yield return shot with { Scene = shot.Scene with { Legend = Legend } };
        }
    }

    private static IEnumerable<Shot> Second()
    {
        var main = Brindle.MainTop(seed: 61);
        main = main with { Parts = [.. main.Parts.Select(part => part.Spot == "U7" ? part with { Marks = OtherAccelerometer } : part.Spot == "U3" ? part with { Wear = 0 } : part)] };
        yield return Of("b-main-top", "B", "top", "flat", "board", Board(main));
        yield return Of("b-main-bottom", "B", "bottom", "flat", "board", Board(Brindle.MainBottom(seed: 62)));
        foreach (var spot in new[] { "U7", "U3" })
        {
            foreach (var shot in CloseUp.Lights(main, spot, "B")) yield return shot with { Name = "b-" + shot.Name, Scene = shot.Scene with { Legend = Legend } };
        }
    }

    /// <summary>A board filling a picture of 960 × 720.</summary>
    private static Scene Board(Scene scene) => scene with { Width = 960, Height = 720, PxPerMm = scene.PxPerMm * 0.6, Grain = 1.6, Legend = Legend, LookAt = (scene.BoardWidthMm / 2, (scene.BoardHeightMm / 2) + 1) };

    private static Shot Whole(string name, string side, Scene scene, string light = "flat") => Of(name, "A", side, light, "whole", scene with { Legend = Legend });

    private static Shot Of(string name, string specimen, string side, string light, string zoom, Scene scene) => new($"brindle-{name}.png", specimen, side, light, zoom, "", scene);
}
