using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Telling.Dossiers;
using Lidoff.TestSupport;

namespace Lidoff.Telling.Tests.Dossiers;

/// <summary>Which pictures show a mark: small pictures of one colour, in which places were noted by hand.</summary>
public sealed class SpotsToReadTests : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly Workspace workspace;
    private readonly OpenDossier dossier;

    public SpotsToReadTests()
    {
        workspace = Workspace.Open(folder["w"], Seeds.Of("spots"), new SteppingClock()).Value;
        Assert.True(DossierSession.Begin(workspace, "d", "").Ok);
        dossier = OpenDossier.Open(workspace, "d", new(() => throw new InvalidOperationException("no name is asked for"))).Value;
    }

    public void Dispose()
    {
        workspace.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void An_outline_goes_before_a_box_and_a_box_before_a_click_and_the_newest_of_a_picture_counts()
    {
        var (a, b, c) = (Add("a.png", 400), Add("b.png", 410), Add("c.png", 420));
        Note(
            """{"kind":"spot","spot":"U1","picture":"a.png","point":[10,10]}""", """{"kind":"spot","spot":"U1","picture":"a.png","point":[50,60]}""",
            """{"kind":"spot","spot":"U1","picture":"b.png","box":[20,30,40,50]}""",
            """{"kind":"spot","spot":"U2","picture":"a.png","point":[90,90]}""",
            // Along its foot and up its right side, as three corners are clicked: from (100, 50) to (180, 110).
            """{"kind":"length","spot":"U1","what":"long side","picture":"c.png","from":[100,110],"to":[180,110]}""", """{"kind":"length","spot":"U1","what":"short side","picture":"c.png","from":[180,110],"to":[180,50]}""",
            // One side alone is no body.
            """{"kind":"length","spot":"U2","what":"long side","picture":"c.png","from":[1,1],"to":[9,1]}""");
        var mark = Assert.Single(SpotsToRead.Of(dossier, "U1"));
        Assert.Equal([c, b, a], mark.Pictures.Select(picture => picture.Sha256));
        var outline = mark.Pictures[0].Outline!.Value;
        Assert.Equal((140.0, 80.0, 80.0, 60.0), (outline.Middle.X, outline.Middle.Y, outline.Width, outline.Height));
        Assert.Equal((20.0, 30.0, 40.0, 50.0), mark.Pictures[1].Box is { } box ? (box.X, box.Y, box.Width, box.Height) : default);
        Assert.Equal((50.0, 60.0), mark.Pictures[2].At is { } at ? (at.X, at.Y) : default);
        Assert.Equal([(90.0, 90.0)], mark.Pictures[2].Others.Select(other => (other.X, other.Y)));
        Assert.Equal([a], Assert.Single(SpotsToRead.Of(dossier, "U2")).Pictures.Select(picture => picture.Sha256));
        Assert.Empty(SpotsToRead.Of(dossier, "U3"));
    }

    [Fact]
    public void Specimens_stand_apart_by_their_own_word_or_that_of_their_picture()
    {
        var (a, b) = (Add("a.png", 400), Add("b.png", 410));
        Note("""{"kind":"picture","file":"b.png","specimen":"B"}""", """{"kind":"spot","spot":"U1","specimen":"A","picture":"a.png","point":[5,5]}""", """{"kind":"spot","spot":"U1","picture":"b.png","point":[5,5]}""");
        Assert.Equal([("A", a), ("B", b)], SpotsToRead.Of(dossier, "U1").Select(mark => (mark.Specimen, Assert.Single(mark.Pictures).Sha256)));
    }

    [Fact]
    public void A_picture_and_what_it_was_made_of_show_one_print()
    {
        var (a, b, made) = (Add("a.png", 400), Add("b.png", 410), Add("stack.png", 420));
        Note(
            """{"kind":"spot","spot":"U1","picture":"a.png","point":[5,5]}""", """{"kind":"spot","spot":"U1","picture":"stack.png","point":[5,5]}""", """{"kind":"spot","spot":"U2","picture":"a.png","point":[9,9]}""",
            $$"""{"kind":"composed","picture":"{{made}}","method":"stack","inputs":["{{a}}","{{b}}"],"settings":"s","program":"p"}""");
        Assert.Equal([made], Assert.Single(SpotsToRead.Of(dossier, "U1")).Pictures.Select(picture => picture.Sha256));
        // Where only the input shows it, that is read.
        Assert.Equal([a], Assert.Single(SpotsToRead.Of(dossier, "U2")).Pictures.Select(picture => picture.Sha256));
    }

    [Fact]
    public void Of_all_spots_those_that_bear_a_mark_are_left_without_what_was_read()
    {
        var a = Add("a.png", 400);
        Note(
            """{"kind":"spot","spot":"U10","picture":"a.png","point":[5,5]}""", """{"kind":"spot","spot":"U9","class":"chip","picture":"a.png","point":[9,9]}""", """{"kind":"spot","spot":"H1","class":"seam","picture":"a.png","point":[9,9]}""",
            """{"kind":"spot","spot":"X1","class":"a word of mine","picture":"a.png","point":[9,9]}""", """{"kind":"spot","spot":"U3","role":"in no picture"}""", """{"kind":"mark","spot":"X1","specimen":"B","lines":["32.000"]}""");
        Assert.Equal(["U9", "U10", "X1"], SpotsToRead.All(dossier).Select(mark => mark.Spot));
        string Read(string spot, string network, string picture, string besides = "") =>
            $$"""{"kind":"reading","spot":"{{spot}}","pictures":["{{picture}}"],{{besides}}"region":[5,5,9,9,0],"turn_deg":0,"lines":[],"readings":[],"networks":["{{network}}"],"settings":"s","program":"p"}""";
        Note(Read("U9", "old", a), Read("U10", "new", "elsewhere", $"\"besides\":[\"{a}\"],"));
        // By other networks is not by these; looked at and left out is looked at.
        var left = SpotsToRead.Left(dossier, ["new"], withMarked: false);
        Assert.Equal((1, 1), (left.Read, left.ByPeople));
        Assert.Equal(["U9"], left.Wanted.Select(mark => mark.Spot));
        Assert.Equal(["U9", "X1"], SpotsToRead.Left(dossier, ["new"], withMarked: true).Wanted.Select(mark => mark.Spot));
        // What these networks and this program could not read there is not tried again; by others, or elsewhere in the picture, it is.
        string Unread(string network, string at) => $$"""{"kind":"unread","spot":"U9","places":[{"picture":"{{a}}","at":{{at}}}],"networks":["{{network}}"],"program":"{{OpenDossier.Program}}","says":["no body"]}""";
        Note(Unread("old", "[9,9]"), Unread("new", "[9,8]"), Unread("new", "[1,2,9,9]"));
        Assert.Equal((0, "U9"), SpotsToRead.Left(dossier, ["new"], withMarked: false) is var before ? (before.Unread, Assert.Single(before.Wanted).Spot) : default);
        Note(Unread("new", "[9,9]"));
        Assert.Equal((1, 0), SpotsToRead.Left(dossier, ["new"], withMarked: false) is var after ? (after.Unread, after.Wanted.Count) : default);
        // Another picture that shows it makes it wanted again.
        Add("b.png", 410);
        Note("""{"kind":"spot","spot":"U10","picture":"b.png","point":[5,5]}""");
        Assert.Contains("U10", SpotsToRead.Left(dossier, ["new"], withMarked: false).Wanted.Select(mark => mark.Spot));
    }

    [Fact]
    public void A_picture_that_cannot_be_opened_is_told_beside_the_others()
    {
        Add("a.png", 400);
        File.WriteAllBytes(folder["broken.png"], File.ReadAllBytes(folder["a.png"])[..40]);
        Take("broken.png");
        Note("""{"kind":"spot","spot":"U1","picture":"a.png","point":[5,5]}""", """{"kind":"spot","spot":"U1","picture":"broken.png","point":[5,5]}""");
        var mark = Assert.Single(SpotsToRead.Of(dossier, "U1"));
        Assert.Equal("a.png", Assert.Single(mark.Pictures).Name);
        Assert.Contains("broken.png", Assert.Single(mark.Faults).Say, StringComparison.Ordinal);
    }

    // Another width makes another file.
    private string Add(string name, int width)
    {
        using (var image = NetVips.Image.Black(width, 300)) File.WriteAllBytes(folder[name], image.PngsaveBuffer());
        return Take(name);
    }

    private string Take(string name)
    {
        using var stream = File.OpenRead(folder[name]);
        var taken = FileTaking.Take(workspace, dossier.Session, stream, name, "add", FileRecognisers.Found()).Value;
        dossier.Refresh();
        return taken.Fact.Sha256;
    }

    private void Note(params string[] lines)
    {
        var batch = new NoteReader(DossierKinds.All, prefix => workspace.Store.Find("d", prefix)).Read("d", Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        Assert.Empty(batch.Lines.SelectMany(line => line.Faults).Select(fault => fault.Say));
        Assert.True(dossier.Append(batch.Drafts).Ok);
    }
}
