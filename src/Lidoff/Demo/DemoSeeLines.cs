namespace Lidoff.Demo;

/// <summary>What the See room holds of the demo: pictures, spots, lengths, and marks as they were read.</summary>
internal static class DemoSeeLines
{
    private const string Top = "brindle-main-top.png";
    private const string Bottom = "brindle-main-bottom.png";
    private const string Lamp = "brindle-lamp-top.png";
    private const string LampBack = "brindle-lamp-bottom.png";

    /// <summary>Chips with a close-up in which both sides of the body were measured.</summary>
    public static IReadOnlyList<string> Measured { get; } = ["U1", "U2", "U3", "U4", "U5", "U6", "U7", "U8", "M1"];

    public static IReadOnlyList<string> All { get; } =
    [
        .. DemoPictureLines.All(),
        .. Spots(),
        .. Marks(),
        .. Measured.SelectMany(spot => DemoPictureLines.Sides(spot, $"brindle-{spot.ToLowerInvariant()}.png")),
        DemoPictureLines.Long("J1", Top),
        DemoPictureLines.Long("ANT1", "brindle-ant1.png"),
        """{"kind":"length","spot":"J1","what":"length","mm":18.57,"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"length","spot":"W1","what":"way","mm":42.0,"u_mm":0.3,"instrument":"calliper, along the cable"}""",
        """{"kind":"length","spot":"W1","what":"thickness","mm":0.30,"u_mm":0.01,"instrument":"micrometer"}""",
        // The planted quarrel: one instrument was closed on the button's rim, the other on its body.
        """{"kind":"length","spot":"S1","what":"width","mm":3.02,"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"length","spot":"S1","what":"width","mm":3.20,"u_mm":0.01,"instrument":"micrometer"}""",
        """{"kind":"pitch","spot":"U2","mm":1.27,"u_mm":0.01,"leads":4}""",
        """{"kind":"pitch","spot":"U1","mm":0.4,"u_mm":0.005,"leads":12}""",
    ];

    private static IEnumerable<string> Spots() =>
    [
        DemoPictureLines.Spot(Top, "U1", "chip", "radio", "a crystal stands beside it"),
        DemoPictureLines.Spot(Top, "U2", "chip", "memory for barks", "eight leads, four lines to the radio"),
        DemoPictureLines.Spot(Top, "U3", "chip", "clock"),
        DemoPictureLines.Spot(Lamp, "U4", "chip", "lamp driver", "its only neighbours are the lamp and a coil"),
        DemoPictureLines.Spot(Top, "U5", "chip", "charger", "between the charging contacts and the cell's pads"),
        DemoPictureLines.Spot(Top, "U6", "chip", "converter", "a coil stands beside it"),
        DemoPictureLines.Spot(Top, "U7", "chip", "accelerometer", "shaking the collar wakes the device"),
        DemoPictureLines.Spot(Bottom, "U8", "chip", "battery protection", "beside a pair of transistors in the cell's negative lead"),
        DemoPictureLines.Spot(Bottom, "Q1", "transistor", "pair of switches of the protection"),
        DemoPictureLines.Spot(Bottom, "M1", "microphone", "microphone", "a hole in the case lies above it"),
        DemoPictureLines.Spot(Top, "X1", "crystal", "crystal of the radio"),
        DemoPictureLines.Spot(Top, "ANT1", "antenna", "chip antenna", "at the board's corner, no copper beneath"),
        DemoPictureLines.Spot(Top, "J1", "connector", "flat cable to the lamp board"),
        DemoPictureLines.Spot(LampBack, "J2", "connector", "flat cable to the main board"),
        DemoPictureLines.Spot(Top, "J3", "connector", "memory display"),
        DemoPictureLines.Spot(Top, "G1", "glue", "bead that holds the cable in its connector", "clear, hard, yellow under low light"),
        DemoPictureLines.Spot(LampBack, "OM1", "overmould", "lump moulded over the cable's end", "keeps pull off the joint"),
        DemoPictureLines.Spot("brindle-cable-flat.png", "W1", "cable", "flat cable of 14 ways between the boards"),
        DemoPictureLines.Spot("brindle-cable-flat.png", "ST1", "stiffener", "stiffener at the cable's end", "white, on the side away from the contacts"),
        DemoPictureLines.Spot("brindle-closed-edge.png", "SE1", "seam", "seam between lid and tray"),
        DemoPictureLines.Spot("brindle-closed-top.png", "DS1", "display", "memory display", "keeps its picture with the supply off for a moment"),
        DemoPictureLines.Spot("brindle-closed-top.png", "CASE", "housing", "lid and tray"),
        DemoPictureLines.Spot("brindle-cell-print.png", "B1", "cell", "pouch cell under the main board"),
        DemoPictureLines.Spot("brindle-spread.png", "MAIN", "board", "main board").Replace("\"spot\":\"MAIN\"", "\"spot\":\"A1\"", StringComparison.Ordinal),
        DemoPictureLines.Spot("brindle-spread.png", "LAMP", "board", "board of button and lamp").Replace("\"spot\":\"LAMP\"", "\"spot\":\"A2\"", StringComparison.Ordinal),
        DemoPictureLines.Spot(Bottom, "K1", "connector", "magnetic charging contact, plus"),
        DemoPictureLines.Spot(Bottom, "K4", "connector", "magnetic charging contact, minus"),
        DemoPictureLines.Spot(Lamp, "S1", "button", "button"),
        DemoPictureLines.Spot(Lamp, "D1", "led", "lamp"),
        DemoPictureLines.Spot(Top, "C1", "capacitor", "capacitor beside the radio's supply pin"),
        DemoPictureLines.Spot(Top, "C2", "capacitor", "capacitor of the radio's core supply"),
        DemoPictureLines.Spot(Top, "C3", "capacitor", "capacitor of the converter", "beside the coil's net"),
        DemoPictureLines.Spot(Top, "C4", "capacitor", "capacitor of the charger"),
        DemoPictureLines.Spot(Top, "R1", "resistor", "pull-up of the clock's data line"),
        DemoPictureLines.Spot(Top, "R2", "resistor", "pull-up of the clock's clock line"),
        DemoPictureLines.Spot(Top, "R3", "resistor", "sets the charging current"),
        DemoPictureLines.Spot(Top, "L1", "inductor", "coil of the converter"),
        DemoPictureLines.Spot(Lamp, "L2", "inductor", "coil of the lamp driver"),
        DemoPictureLines.Spot(Lamp, "C6", "capacitor", "capacitor of the lamp driver"),
    ];

    private static IEnumerable<string> Marks() =>
    [
        """{"kind":"mark","spot":"U1","specimen":"A","lines":["N52832","QFAA?0","2131AC"],"instrument":"eye, raking light"}""",
        // A look-alike misread: the board says JVSIQ. The part is found all the same.
        """{"kind":"mark","spot":"U2","specimen":"A","lines":["25Q32JV5IQ","2118"],"instrument":"eye"}""",
        """{"kind":"mark","spot":"U3","specimen":"A","lines":["3028??"],"instrument":"eye; the right half is worn"}""",
        """{"kind":"mark","spot":"U3","specimen":"A","lines":["3028C?"],"instrument":"eye, raking light from the left"}""",
        """{"kind":"mark","spot":"U4","specimen":"A","lines":["OW7K","V-04"],"instrument":"eye"}""",
        """{"kind":"mark","spot":"U5","specimen":"A","lines":["NXE","118"],"instrument":"eye"}""",
        """{"kind":"mark","spot":"U6","specimen":"A","lines":["62740","1841"],"instrument":"eye"}""",
        """{"kind":"mark","spot":"U8","specimen":"A","lines":["DW01A"],"instrument":"eye"}""",
        // B has another accelerometer at the same place; A's was read once more after that, under low light from two sides.
        """{"kind":"mark","spot":"U7","specimen":"B","lines":["343B","#204","5120"],"instrument":"eye, raking light"}""",
        """{"kind":"mark","spot":"U7","specimen":"A","lines":["345B","#118","4417"],"instrument":"eye, raking light from two sides"}""",
    ];
}
