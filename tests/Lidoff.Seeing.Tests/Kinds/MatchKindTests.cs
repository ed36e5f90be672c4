using System.Text.Json;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class MatchKindTests
{
    private const string Good = """
        {"first":"aa","second":"bb","mirrored":true,"landmarks":["F1","F2","F3","F4"],"first_points":[[1,2],[3,4],[5,6],[7,8]],"second_points":[[2,1],[4,3],[6,5],[8,7]],
         "u_px":[0.1,0.2],"rests_px":[0.1,0,0.2,0.3],"agree":25,"of":67,"by_chance":0.2,"log10_odds":-43,"settings":"holes and lands, seed 1","program":"lidoff 0.1.0","says":["Turned."]}
        """;

    [Fact]
    public void A_whole_line_is_read()
    {
        var match = Read(Good).Value;
        Assert.Equal(("aa", "bb", true, 25, 67), (match.First, match.Second, match.Mirrored, match.Agree, match.Of));
        Assert.Equal(new(5, 6), match.FirstPoints[2]);
        Assert.Equal(new(8, 7), match.SecondPoints[3]);
        Assert.Equal((0.1, 0.2), (match.FirstUPx, match.SecondUPx));
    }

    [Fact]
    public void All_faults_come_at_once()
    {
        var faults = Read("""
            {"first":"aa","second":"aa","mirrored":true,"landmarks":["F1","F1","F3","F4"],"first_points":[[1,2]],"second_points":[[2,1],[4,3],[6,5],[8,7]],
             "u_px":[0,0.2],"rests_px":[0.1,0,0.2,0.3],"agree":25,"of":67,"by_chance":0.2,"log10_odds":-43,"settings":"s","program":"p"}
            """).Faults.Select(fault => fault.Where).ToList();
        Assert.Equal(["second", "landmarks", "first_points", "u_px"], faults.Select(where => where.Split('[')[0]).Distinct());
    }

    [Fact]
    public void A_landmark_says_who_found_it()
    {
        var kind = new LandmarkKind();
        Assert.Equal("", kind.Read(Json("""{"landmark":"H1","picture":"a.jpg","point":[1,2]}"""), 1).Value.FoundBy);
        Assert.Equal("0123", kind.Read(Json("""{"landmark":"F1","picture":"a.jpg","point":[1,2],"found_by":"0123"}"""), 1).Value.FoundBy);
    }

    private static Numbers.Failing.Outcome<MatchSighting> Read(string json) => new MatchKind().Read(Json(json), 1);

    private static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
