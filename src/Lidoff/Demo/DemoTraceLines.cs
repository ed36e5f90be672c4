namespace Lidoff.Demo;

/// <summary>What the Trace room holds of the demo: pads, touches, rails, voltages, what answered on the bus.</summary>
internal static class DemoTraceLines
{
    private const string Top = "brindle-main-top.png";
    private const string Bottom = "brindle-main-bottom.png";

    public static IReadOnlyList<string> All { get; } =
    [
        .. Pads(),
        .. Touches(),
        """{"kind":"pins","spot":"U1","count":48,"ground":[31,45]}""",
        """{"kind":"pins","spot":"U2","count":8,"ground":[4]}""",
        """{"kind":"pins","spot":"U3","count":8}""",
        """{"kind":"pins","spot":"U5","count":10}""",
        """{"kind":"pins","spot":"U6","count":12}""",
        """{"kind":"pins","spot":"U7","count":14}""",
        """{"kind":"pins","spot":"U8","count":6}""",
        """{"kind":"pins","spot":"U4","count":8}""",
        """{"kind":"pins","spot":"M1","count":5}""",
        """{"kind":"bus","type":"i2c","address":"0x52","spot":"U3","acks":6,"nacks":0}""",
        """{"kind":"bus","type":"i2c","address":"0x53","spot":"U7","specimen":"A","acks":8,"nacks":0}""",
        """{"kind":"bus","type":"spi","spot":"U2"}""",
        """{"kind":"identity","spot":"U2","reg":"0x9f","value":"0xef4016"}""",
        """{"kind":"identity","spot":"U7","reg":"0x00","value":"0xe5"}""",
        """{"kind":"supply","spot":"U1","v":1.802,"u_v":0.004}""",
        """{"kind":"supply","spot":"U3","v":1.80,"u_v":0.01}""",
        """{"kind":"rail","rail":"VBUS","v":5.02,"u_v":0.02,"from":"K1","to":["U5"],"net":"VBUS","why":"beeps from the contact to the charger"}""",
        """{"kind":"rail","rail":"VBAT","v":3.87,"u_v":0.01,"from":"B1","to":["U6","U8","U4"],"net":"VBAT","why":"beeps from the cell's plus pad"}""",
        """{"kind":"rail","rail":"VCHG","v":4.18,"u_v":0.02,"from":"U5","to":["B1"],"why":"only while on the dock"}""",
        """{"kind":"rail","rail":"V18","v":1.802,"u_v":0.004,"from":"U6","to":["U1","U2","U3","U7","M1","DS1"],"net":"V18","why":"beeps from the coil's far end"}""",
        """{"kind":"net","net":"GND","points":["GND","U1.45","U2.4","BN1"],"why":"large copper, beeps to the cell's minus pad through the closed switches"}""",
    ];

    private static IEnumerable<string> Pads()
    {
        foreach (var (pin, name, role) in new[] { (13, "VDD", "power_in"), (31, "VSS", "power_in"), (36, "VDD", "power_in"), (45, "VSS", "power_in"), (26, "SWDIO", "bidirectional"), (25, "SWDCLK", "input"), (14, "P0.11", "bidirectional"), (15, "P0.12", "bidirectional") })
        {
            yield return DemoPictureLines.Pin("U1", pin, Top, "top", name, role);
        }

        foreach (var (pin, name, role) in new[] { (1, "CS", "input"), (2, "DO", "output"), (4, "GND", "power_in"), (5, "DI", "input"), (6, "CLK", "input"), (8, "VCC", "power_in") })
        {
            yield return DemoPictureLines.Pin("U2", pin, Top, "top", name, role);
        }

        for (var i = 1; i <= 6; i++) yield return DemoPictureLines.Pad($"TP{i}", Bottom, "bottom", "unspecified");
        for (var i = 1; i <= 5; i++) yield return DemoPictureLines.Pad($"P{i}", Bottom, "bottom", "unspecified");
        for (var i = 1; i <= 4; i++) yield return DemoPictureLines.Pad($"K{i}", Bottom, "bottom", "unspecified");
        foreach (var pad in new[] { "BP1", "BN1" }) yield return DemoPictureLines.Pad(pad, Bottom, "bottom", "power_in");
        for (var i = 11; i <= 14; i++) yield return DemoPictureLines.Pad($"TP{i}", "brindle-lamp-bottom.png", "bottom", "unspecified");
    }

    private static IEnumerable<string> Touches()
    {
        string[] beeps =
        [
            "U1.45 GND", "U1.31 GND", "U2.4 GND", "U2.8 U1.36", "U1.13 U1.36", "TP1 U1.36", "TP2 GND", "P1 U1.36", "P2 U1.26", "P3 U1.25", "P4 GND",
            "K4 GND", "K1 C4.1", "BP1 TP3", "U2.1 U1.17", "U2.2 U1.18", "U2.5 U1.19", "U2.6 U1.20", "U3.1 U1.14", "U3.2 U1.15", "R1.1 U1.14", "R2.1 U1.15",
            "R1.2 U1.36", "R2.2 U1.36", "J1.1 GND", "J1.2 TP3", "J1.14 GND",
        ];
        // What does not connect matters as much: the two middle contacts are held but not wired, the button is not on ground at rest.
        string[] opens = ["K2 GND", "K3 GND", "K2 K3", "K2 U1.26", "K3 U1.25", "BP1 BN1", "P5 GND", "TP4 GND", "TP5 U1.36", "J1.7 J1.8"];
        foreach (var pair in beeps.Select(beep => beep.Split(' '))) yield return $$"""{"kind":"touch","specimen":"A","a":"{{pair[0]}}","b":"{{pair[1]}}","beep":true,"threshold_ohm":40}""";
        foreach (var pair in opens.Select(open => open.Split(' '))) yield return $$"""{"kind":"touch","specimen":"A","a":"{{pair[0]}}","b":"{{pair[1]}}","open":true}""";
        yield return """{"kind":"touch","specimen":"A","a":"R1.1","b":"R1.2","ohms":4690,"u_ohm":25}""";
        yield return """{"kind":"touch","specimen":"A","a":"R2.1","b":"R2.2","ohms":4710,"u_ohm":25}""";
        yield return """{"kind":"touch","specimen":"A","a":"R3.1","b":"GND","ohms":5980,"u_ohm":30}""";
        yield return """{"kind":"touch","specimen":"A","a":"W1.1","b":"W1.15","ohms":0.03,"u_ohm":0.01}""";
        yield return """{"kind":"touch","specimen":"A","a":"TP1","b":"GND","volts":1.802,"u_v":0.004}""";
        yield return """{"kind":"touch","specimen":"A","a":"TP3","b":"GND","volts":3.80,"u_v":0.01}""";
        yield return """{"kind":"touch","specimen":"A","a":"K1","b":"K4","volts":5.02,"u_v":0.02}""";
    }
}
