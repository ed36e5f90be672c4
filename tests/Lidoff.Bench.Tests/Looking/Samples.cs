using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>Pages to look at: an invented device, a hostile one, an empty one.</summary>
public static class Samples
{
    public const string HostileMark = "<script>alert('mark')</script>";

    public const string Turned = "safe\u202Egpj.exe";

    public static DossierPageModel Empty(string name) => new(name, "", 0, [], [], [], [], []);

    /// <summary>Values as a real page might have them; the device is invented.</summary>
    public static DossierPageModel Brindle(FakeBench bench, FakeTiles tiles)
    {
        var (front, back) = (Drawing("#3d5b46", "#c9b37a"), Drawing("#2d4a5b", "#c9b37a"));
        var (frontHash, backHash) = (bench.Keep(front, "front.svg"), bench.Keep(back, "back.svg"));
        var note = bench.Keep("t_s,i_a\n0,0.001\n"u8.ToArray(), "sleep.csv");
        tiles.Thumbnails[frontHash] = new(front, "image/svg+xml");
        tiles.Thumbnails[backHash] = new(back, "image/svg+xml");
        return new(
            "brindle",
            "Brindle, a bark counter for a dog's collar (invented)",
            412,
            ["The scale of back.jpg disagrees with the outline by 2.1 %."],
            [
                new("collar-board-front.jpg", frontHash, "a JPEG picture", 8_421_377, 6000, 4000, "52.3 px/mm ± 0.4 %"),
                new("collar-board-back.jpg", backHash, "a JPEG picture", 7_904_112, 6000, 4000, "", "Its scale disagrees with the board's outline."),
                new("sleep-current.csv", note, "a table in text", 1_204_310, null, null),
            ],
            [
                new("U1", "radio and processor, beside the antenna", ["N52832", "QFAA?0", "2104AB"], "6.01 × 6.00 mm ± 0.02, 48 pads at 0.4 mm", "part",
                    [
                        new("nRF52832", "Nordic Semiconductor", 0.962, [new("mark", 31.2, "6 of 6 read glyphs fit the first line"), new("body", 4.0, "6.0 × 6.0 mm is its package"), new("pins", -0.4, "48 counted, its package has 48 and a pad")]),
                        new("nRF52810", "Nordic Semiconductor", 0.011, []),
                    ],
                    0.003,
                    0.024),
                new("U3", "beside the crystal can", ["R2(8|B)?"], "1.51 × 3.20 mm ± 0.02", "family",
                    [new("RV-3032-C7", "Micro Crystal", 0.44, []), new("RV-3028-C7", "Micro Crystal", 0.38, [])],
                    0.13,
                    0.05),
                new("J2", "flat cable between the boards", [], "18.7 mm over 14 ways", "", [], 0, 0),
            ],
            [
                new("runtime", "103 h", "74 to 144 h", Grade.E3, "checked", ["sleep current 71 %", "capacity 22 %"], "charge over mean current", ["capacity: 310 mAh"], ["Capacity is as printed, not as measured."]),
                new("flat cable pitch", "1.25 mm", "1.24 to 1.26 mm", Grade.E2, "validated", ["width 88 %"], "span over ways less one", [], []),
            ],
            [
                new("C1", "It runs four days, give or take one and a half, and the sleep current decides.", Grade.E3, "same", 14),
                new("C2", "The clock chip keeps time while the radio sleeps.", Grade.E2, "moved", 1),
            ]);
    }

    /// <summary>Everything a stranger may have put into names, marks and labels.</summary>
    public static DossierPageModel Hostile(FakeBench bench) => new(
        "hostile",
        "\"><img src=x onerror=alert(1)>",
        3,
        ["<b>bold</b> & \u0007bell"],
        [
            new("../../etc/passwd", bench.Keep("<html><script>alert(1)</script></html>"u8.ToArray(), "../../etc/passwd"), "a text", 38, null, null),
            new(Turned, bench.Keep(Encoding.UTF8.GetBytes("x"), Turned), "a text", 1, null, null),
        ],
        [
            new("U<9>", "</li><script>", [HostileMark, "\u05D0\u05D1\u05D2 123", new string('A', 10_000)], "", "part",
                [new("'onmouseover='alert(1)", "\u2028", 0.9999, [new("<i>", -3, "<u>")])], 0, 0.00001),
        ],
        [new("<script>", "1", "0 to 2", Grade.E0, "checked", ["<s>"], "<t>", ["<v>"], ["<v>"])],
        [new("C<1>", "<script>alert('claim')</script>", Grade.E1, "flipped", 1)]);

    private static byte[] Drawing(string board, string copper) => Encoding.UTF8.GetBytes(
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 400\" width=\"600\" height=\"400\"><path fill=\"#2b2f2c\" d=\"M0 0h600v400H0z\"/><path fill=\"{board}\" stroke=\"{copper}\" stroke-width=\"4\" d=\"M60 60h480v280H60z\"/><path d=\"M120 120h110v110H120zM320 100h70v70h-70zM330 240h120v50H330z\"/></svg>");
}
