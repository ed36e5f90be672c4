namespace Lidoff.Bench.Tests.Looking;

/// <summary>Dossiers to look at: an invented device and a hostile one.</summary>
public static class Samples
{
    public const string HostileMark = "<script>alert('mark')</script>";

    public const string Turned = "safe\u202Egpj.exe";

    public const string Title = "Brindle, a bark counter for a dog's collar (invented)";

    /// <summary>Values as a real dossier might have them; the device is invented.</summary>
    public static void Brindle(FakeBench bench) => bench.Set(
        "brindle",
        Title,
        """{"kind":"dossier","title":"Brindle, a bark counter for a dog's collar (invented)","notice":"Invented device, invented data."}""",
        """{"kind":"spot","spot":"U1","role":"radio and processor, beside the antenna"}""",
        """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
        """{"kind":"body","spot":"U1","mm":[6.01,6.00],"u_mm":0.02}""",
        """{"kind":"spot","spot":"J2","role":"flat cable between the boards"}""",
        """{"kind":"length","spot":"U1","what":"long side","mm":6.01,"u_mm":0.02}""",
        """{"kind":"reckon","reckoning":"R1","calculation":"runtime","inputs":{"capacity":"310 mAh ± 10","current":"3 mA ± 0.5"}}""",
        """{"kind":"claim","claim":"C1","text":"U1 is {part:U1}."}""",
        """{"kind":"step","does":"cut the seam","act":"cut","destroys":"the seal"}""",
        """{"kind":"touch","a":"U1.13","b":"GND","beep":true}""");

    /// <summary>Everything a stranger may have put into names, marks and labels.</summary>
    public static void Hostile(FakeBench bench) => bench.Set(
        "hostile",
        "\"><img src=x onerror=alert(1)>",
        """{"kind":"spot","spot":"U<9>","role":"</li><script>"}""",
        $$"""{"kind":"mark","spot":"U<9>","lines":["{{HostileMark}}","\u05D0\u05D1\u05D2 123","{{new string('A', 200)}}"]}""",
        """{"kind":"claim","claim":"C1","text":"<script>alert('claim')</script> \u202E \u2028 <b>bold"}""",
        """{"kind":"step","does":"<i>pry</i> \u0007bell","tool":"<u>"}""",
        """{"kind":"touch","a":"U<9>.1","b":"'onmouseover='alert(1)","open":true}""");
}
