using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

/// <summary>What a live camera leaves behind: bursts, recordings, moments, stills.</summary>
public sealed class CameraKindTests
{
    private const string Burst = """{"burst":"B1","frames":["aa","bb"],"zoom":"2x","light":"ring","camera":"cam"}""";
    private const string Recording = """{"recording":"V1","file":"aa","voice":true,"broke_off":true,"zoom":"2x","light":"ring","camera":"cam"}""";
    private const string Moment = """{"recording":"V1","second":12.5,"spot":"U1","says":"lamp on"}""";
    private const string Still = """{"file":"aa","video":"bb","second":0.04}""";

    [Fact]
    public void A_line_of_each_reads_in_full_and_the_kinds_stand_by_their_keys()
    {
        Assert.Equal(new BurstSighting("B1", ["aa", "bb"], "2x", "ring", "cam"), KindLines.Read(new BurstKind(), Burst));
        Assert.Equal(new RecordingSighting("V1", "aa", true, true, "2x", "ring", "cam"), KindLines.Read(new RecordingKind(), Recording));
        Assert.Equal(new RecordingSighting("V1", "aa", false, false, "", "", ""), KindLines.Read(new RecordingKind(), """{"recording":"V1","file":"aa"}"""));
        Assert.Equal(new MomentSighting("V1", 12.5, "U1", "lamp on"), KindLines.Read(new MomentKind(), Moment));
        Assert.Equal(new StillSighting("aa", "bb", 0.04), KindLines.Read(new StillKind(), Still));
        foreach (var (kind, good) in new (IEvidenceKind, string)[] { (new BurstKind(), Burst), (new RecordingKind(), Recording), (new MomentKind(), Moment), (new StillKind(), Still) }) Assert.Empty(KindLines.Complaints(kind, good));
    }

    [Fact]
    public void A_bad_line_says_what_is_wrong()
    {
        Assert.Equal(["\"frames\" should be a list of 2 to 100 texts, but here it is [\"aa\"]."], KindLines.Say(new BurstKind(), """{"burst":"B1","frames":["aa"]}"""));
        Assert.Equal(["\"voice\" should be true or false, but here it is \"yes\"."], KindLines.Say(new RecordingKind(), """{"recording":"V1","file":"aa","voice":"yes"}"""));
        Assert.Equal(["\"second\" should be a number of 0 or more, but here it is -1."], KindLines.Say(new MomentKind(), """{"recording":"V1","second":-1}"""));
        Assert.Equal(["\"video\" is missing; it should be a text of 1 to 255 characters."], KindLines.Say(new StillKind(), """{"file":"aa","second":1}"""));
    }
}
