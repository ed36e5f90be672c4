using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Demo;

/// <summary>What is noted about the demo device, line by line as a user would type it. All of it is invented; the chips are real parts.</summary>
internal static class DemoLines
{
    public const string MainPicture = "brindle-main-top.png";
    public const string LampPicture = "brindle-lamp-top.png";

    /// <summary>When the device was opened.</summary>
    public static readonly DateTimeOffset FirstDay = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    /// <summary>When the swapped digits were found.</summary>
    public static readonly DateTimeOffset LaterDay = new(2026, 3, 9, 9, 0, 0, TimeSpan.Zero);

    /// <summary>Everything noted before publication.</summary>
    public static IReadOnlyList<string> First(RenderedScene main, RenderedScene lamp) =>
    [
        """{"kind":"specimen","specimen":"A","says":"bought used, collar strap missing, lights up when shaken","may_destroy":true,"mass_g":21.4,"u_g":0.05}""",
        """{"kind":"specimen","specimen":"B","says":"new in its box, kept whole"}""",
        """{"kind":"state","specimen":"A","name":"idle","says":"nothing lit","current_ua":6.1,"u_ua":0.4}""",
        """{"kind":"state","specimen":"A","name":"night lamp","lights":"amber, once a second","buttons":"two short presses","current_ua":2400,"u_ua":60}""",
        """{"kind":"step","specimen":"A","does":"Photographed all sides, whole, with a ruler","act":"look","tool":"stand, flat light","minutes":10}""",
        """{"kind":"step","specimen":"A","does":"Cut the seam on the lamp side, away from the cell","act":"cut","tool":"ceramic blade","minutes":12,"destroys":"the seal and what it could have told about water"}""",
        """{"kind":"step","specimen":"A","does":"Unsoldered and taped the cell's leads, one at a time","act":"cell","tool":"plastic spudger, insulating tape","minutes":4,"destroys":"the clock's time"}""",
        """{"kind":"step","specimen":"A","does":"Fed the main board from a bench supply; every state still comes up","act":"supply","tool":"bench supply","setting":"3.8 V, 50 mA limit","minutes":9}""",
        """{"kind":"step","specimen":"A","does":"Probed pads of radio and memory against ground","act":"probe","tool":"meter, needle tips","minutes":15}""",
        """{"kind":"cell","specimen":"A","spot":"B1","volts":3.87,"u_v":0.01,"printed":"0.67 Wh","mm":[20.1,14.9,4.0],"wires":2,"connected":false}""",
        """{"kind":"mass","specimen":"A","spot":"B1","g":3.61,"u_g":0.01}""",
        .. Picture(main, MainPicture),
        .. Picture(lamp, LampPicture),
        Spot(main, "U1", MainPicture, "radio", "a crystal stands beside it", "chip"),
        Spot(main, "U2", MainPicture, "memory for barks", "eight leads, four lines to the radio", "chip"),
        Spot(main, "U3", MainPicture, "clock", "", "chip"),
        Spot(main, "X1", MainPicture, "crystal of the radio", "", "crystal"),
        Spot(main, "J1", MainPicture, "flat cable to the lamp board", "", "connector"),
        Spot(main, "C1", MainPicture, "capacitor beside the radio's supply pin", "", "passive"),
        Spot(main, "C2", MainPicture, "capacitor of the converter", "the largest of the small bodies, beside the coil's net", "passive"),
        Spot(main, "R1", MainPicture, "resistor on a line to the clock", "", "passive"),
        Spot(main, "L1", MainPicture, "coil of the converter", "", "passive"),
        """{"kind":"spot","spot":"B1","role":"pouch cell under the main board","class":"cell"}""",
        """{"kind":"spot","spot":"W1","role":"flat cable of 14 ways between the boards","class":"cable"}""",
        Spot(lamp, "U4", LampPicture, "lamp driver", "its only neighbours are the lamp and a coil", "chip"),
        Spot(lamp, "S1", LampPicture, "button", "", "switch"),
        Spot(lamp, "D1", LampPicture, "lamp", "", "lamp"),
        """{"kind":"mark","spot":"U1","specimen":"A","lines":["N52832","QFAA?0","2131AC"],"instrument":"eye, raking light"}""",
        // A look-alike misread: the board says JVSIQ. The part is found all the same.
        """{"kind":"mark","spot":"U2","specimen":"A","lines":["25Q32JV5IQ","2118"],"instrument":"eye"}""",
        """{"kind":"mark","spot":"U3","specimen":"A","lines":["3028??"],"instrument":"eye; the right half is worn"}""",
        """{"kind":"mark","spot":"U4","specimen":"A","lines":["B7K","21"],"instrument":"eye"}""",
        Length(main, "U1", MainPicture, part => (part.Left, part.Right), "length"),
        Length(main, "U1", MainPicture, part => (part.Top, part.Bottom), "width"),
        Length(lamp, "U4", LampPicture, part => (part.Left, part.Right), "length"),
        Length(lamp, "U4", LampPicture, part => (part.Top, part.Bottom), "width"),
        Length(main, "J1", MainPicture, part => (part.Left, part.Right), "length"),
        """{"kind":"length","spot":"J1","what":"length","mm":18.57,"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"length","spot":"W1","what":"way","mm":42.0,"u_mm":0.3,"instrument":"calliper, along the cable"}""",
        """{"kind":"length","spot":"S1","what":"width","mm":3.02,"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"length","spot":"S1","what":"width","mm":3.20,"u_mm":0.01,"instrument":"micrometer"}""",
        """{"kind":"body","spot":"U1","mm":[6.01,5.99],"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"pins","spot":"U1","count":48,"ground":[31,45]}""",
        """{"kind":"pins","spot":"U2","count":8}""",
        """{"kind":"bus","type":"i2c","address":"0x52","spot":"U3","acks":12,"nacks":0}""",
        """{"kind":"identity","spot":"U2","reg":"0x9f","value":"0xef4016"}""",
        """{"kind":"touch","a":"U1.45","b":"GND","beep":true,"threshold_ohm":40}""",
        """{"kind":"touch","a":"U2.8","b":"U1.36","beep":true,"threshold_ohm":40}""",
        """{"kind":"touch","a":"U2.4","b":"GND","beep":true,"threshold_ohm":40}""",
        """{"kind":"supply","spot":"U1","v":1.802,"u_v":0.004}""",
        """{"kind":"reckon","reckoning":"R1","calculation":"capacity_from_energy","inputs":{"energy":"0.67 Wh ± 0.02","voltage":"3.7"},"says":"What is the cell's capacity?"}""",
        """{"kind":"reckon","reckoning":"R2","calculation":"runtime","inputs":{"capacity":{"from":"R1"},"sleep_current":"6.1 µA ± 0.4","event_charge":"310 µC ± 40","event_rate":"60..240","reserve":"5..15"},"says":"How long does it run between charges?"}""",
        """{"kind":"reckon","reckoning":"R3","calculation":"energy_density","inputs":{"energy":"0.67 Wh ± 0.02","length":"20.1 mm ± 0.1","width":"14.9 mm ± 0.1","thickness":"4.0 mm ± 0.1"},"says":"Is the print on the cell believable?"}""",
        """{"kind":"reckon","reckoning":"R4","calculation":"i2c_pullup_most","inputs":{"rise_time":"300","capacitance":"40..80 pF"},"says":"How large may the clock's pull-ups be?"}""",
        """{"kind":"reckon","reckoning":"R5","calculation":"pitch_from_cable","inputs":{"width":{"from":"length:J1:length"},"ways":"14"},"says":"How far apart are the flat cable's ways?"}""",
        """{"kind":"reckon","reckoning":"R6","calculation":"trace_resistance","inputs":{"length":{"from":"length:W1:way"},"width":"0.7 mm ± 0.05","thickness":"35 µm ± 3"},"says":"What resistance has one way of the flat cable?"}""",
        """{"kind":"claim","claim":"C1","text":"The radio at U1 is {part:U1}, read from a mark with one unread character, from its size and from its 48 pins."}""",
        """{"kind":"claim","claim":"C2","text":"The lamp driver at U4 is {part:U4}; it measures {length:U4:length} by {length:U4:width}."}""",
        """{"kind":"claim","claim":"C3","text":"The flat-cable connector is {length:J1:length} long."}""",
        """{"kind":"claim","claim":"C4","text":"The cell holds {reckoning:R1}, and a charge lasts {reckoning:R2}."}""",
        """{"kind":"claim","claim":"C5","text":"A clock chip of its own was chosen so that the radio can sleep: it is {part:U3}.","why":true}""",
        """{"kind":"claim","claim":"C6","text":"The buzzer weighs {mass:BZ1}."}""",
        """{"kind":"claim","claim":"C7","text":"The ways of the flat cable stand {reckoning:R5} apart, and one of them has {reckoning:R6}."}""",
        """{"kind":"claim","claim":"C8","text":"Barks are kept in U2, {part:U2}, which says so itself in its identity register."}""",
    ];

    /// <summary>What was noted after publication: two digits of a calliper reading (the entry <paramref name="swapped"/>) had been swapped.</summary>
    public static IReadOnlyList<string> Later(EntryId swapped) =>
    [
        """{"kind":"length","spot":"J1","what":"length","mm":18.75,"u_mm":0.02,"instrument":"calliper"}""",
        Text($$"""{"kind":"supersede","target":"{{swapped.Hex}}","by_line":1,"why":"two digits were swapped in writing it down"}"""),
        """{"kind":"decide","spot":"U4","not_listed":true,"why":"a house code: the same three characters stand on the box's spare part list"}""",
    ];

    /// <summary>The lines with the times at which they were seen: a minute apart on an invented day, so that every demo has the same.</summary>
    public static IEnumerable<string> Seen(IReadOnlyList<string> lines, DateTimeOffset begun) =>
        lines.Select((line, i) => Text($"{line[..^1]},\"at\":\"{begun.AddMinutes(i):yyyy-MM-dd'T'HH:mm:ss'Z'}\"}}"));

    private static IEnumerable<string> Picture(RenderedScene scene, string name)
    {
        var (from, to) = (scene.Outline[0], scene.Outline[1]);
        yield return Text($$"""{"kind":"picture","file":"{{name}}","side":"top","light":"flat","zoom":"1"}""");
        yield return Text($$"""{"kind":"scale","picture":"{{name}}","from":{{Clicked(from, 1)}},"to":{{Clicked(to, 2)}},"length_mm":{{scene.Scene.BoardWidthMm}},"u_mm":0.03}""");
    }

    private static string Spot(RenderedScene scene, string spot, string picture, string role, string why, string kind)
    {
        var part = Part(scene, spot);
        var middle = new PicturePoint(part.Corners.Average(corner => corner.X), part.Corners.Average(corner => corner.Y));
        var because = why.Length > 0 ? $",\"why\":\"{why}\"" : "";
        return Text($$"""{"kind":"spot","spot":"{{spot}}","picture":"{{picture}}","point":{{Clicked(middle, 0)}},"role":"{{role}}","class":"{{kind}}"{{because}}}""");
    }

    private static string Length(RenderedScene scene, string spot, string picture, Func<TruePart, (PicturePoint From, PicturePoint To)> ends, string what)
    {
        var part = Part(scene, spot);
        var (from, to) = ends(part);
        return Text($$"""{"kind":"length","picture":"{{picture}}","spot":"{{spot}}","what":"{{what}}","from":{{Clicked(from, 3)}},"to":{{Clicked(to, 4)}},"height_mm":{{part.Part.HeightMm}}}""");
    }

    private static TruePart Part(RenderedScene scene, string spot) => scene.Parts.Single(part => part.Part.Spot == spot);

    /// <summary>A hand that is a little off, always the same way, so that the demo is the same everywhere.</summary>
    private static string Clicked(PicturePoint point, int hand)
    {
        ReadOnlySpan<double> off = [0, 0.6, -0.8, 0.9, -0.5];
        return Text($"[{Math.Round(point.X + off[hand], 1)},{Math.Round(point.Y - off[hand], 1)}]");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
