using System.Text.Json;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Tests.Commands;

/// <summary>The commands that need no dossier (name, date, measure, catalogue), called like a user: keys to the letter, exit codes, sentences.</summary>
public sealed class AskingCommandTests : IDisposable
{
    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Fact]
    public async Task Name_answers_the_line_of_the_contracts_with_the_keys_of_the_contracts()
    {
        // The evidence line as docs/contracts.md writes it.
        var (code, talk) = await run.With(
            """{"id":"17","evidence":{"mark_lines":["N52832","QFAA?0"],"body_mm":[6.0,6.0],"u_mm":0.05,"height_mm":0.85,"pins":48,"pitch_mm":0.4,"package":"QFN","bus":{"type":"i2c","address":"0x68"},"id_register":{"reg":"0x75","value":"0x71"},"role":"beside a 32 MHz crystal and an antenna","class":null,"supply_v":3.0,"ground_pins":[13,45],"date_code":"1701"}}""",
            "name", "-", "--top", "3", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var answer = CommandRun.Only(talk);
        Assert.Equal(["format", "id", "candidates", "others_p", "family", "none_p", "level", "next"], CommandRun.Keys(answer));
        var first = answer.GetProperty("candidates")[0];
        Assert.Equal(["part", "order_codes", "maker", "class", "p", "because"], CommandRun.Keys(first));
        Assert.Equal("nRF52832", first.GetProperty("part").GetString());
        Assert.Equal(["evidence", "db", "say"], CommandRun.Keys(first.GetProperty("because")[0]));
        Assert.InRange(answer.GetProperty("candidates").GetArrayLength(), 1, 3);
        var total = answer.GetProperty("candidates").EnumerateArray().Sum(each => each.GetProperty("p").GetDouble())
            + answer.GetProperty("others_p").GetDouble() + answer.GetProperty("none_p").GetDouble();
        Assert.InRange(total, 0.9999, 1.0001);
    }

    [Fact]
    public async Task Name_puts_an_error_in_the_place_of_a_bad_line_and_refuses_a_wholly_bad_input()
    {
        var (code, talk) = await run.With("{\"id\":\"a\",\"evidence\":{\"pins\":8}}\nx\n", "name", "-", "--json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal("""{"format":1,"id":"2","error":{"where":"line 2, byte 1","expected":"one JSON object","say":"Line 2, byte 1: this is not JSON."}}""", talk.Out[1]);
        Assert.Equal(ExitCodes.Refused, (await run.With("x\n", "name", "-", "--json")).Code);
        Assert.Equal(ExitCodes.Refused, (await run.Of("name", "gone.jsonl")).Code);
        var (usage, said) = await run.Of("name", "-", "--top", "0");
        Assert.Equal(ExitCodes.Usage, usage);
        Assert.Equal("--top is a whole number of one or more.", Assert.Single(said.Said));
    }

    [Fact]
    public async Task Date_answers_as_the_contracts_write_it()
    {
        var (code, talk) = await run.Of("date", "0403", "0405", "--between", "2003-01..2006-12", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var answer = CommandRun.Only(talk);
        Assert.Equal(["format", "codes", "window90", "quarrel"], CommandRun.Keys(answer));
        Assert.Equal(["code", "readings"], CommandRun.Keys(answer.GetProperty("codes")[0]));
        Assert.Equal("""{"from":"2004-W03","to":"2004-W03","rule":"YYWW iso","p":""", answer.GetProperty("codes")[0].GetProperty("readings")[0].GetRawText()[..57]);
        Assert.Equal("""{"from":"2004-W03","to":"2004-W05"}""", answer.GetProperty("window90").GetRawText());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("quarrel").ValueKind);
    }

    // 10R's readings: the checkbook's trap. Brown black red gold is 1 kΩ ± 5 %: a worked example of a public chart of IEC 60062.
    [Fact]
    public async Task Value_answers_with_every_reading_of_codes_and_bands()
    {
        var (code, talk) = await run.Of("value", "10R", "brown-black-red-gold", "2A474J", "XYZZY", "--json");
        Assert.Equal(ExitCodes.Look, code);
        var answers = talk.Out.Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal(["format", "code", "readings", "none_p"], CommandRun.Keys(answers[0]));
        Assert.Equal([10, 1.24, 12.4], answers[0].GetProperty("readings").EnumerateArray().Select(each => each.GetProperty("value").GetDouble()));
        Assert.Equal(["value", "unit", "sort", "rule", "tolerances", "as", "on_head", "p"], CommandRun.Keys(answers[0].GetProperty("readings")[1]));
        Assert.StartsWith("""{"value":1000,"unit":"Ω","sort":"resistor","rule":"4 bands, IEC 60062","tolerances":[{"below":5,"above":5,"unit":"%"}],"bands":["brown","black","red","gold"],"from_end":false,"p":""", answers[1].GetProperty("readings")[0].GetRawText(), StringComparison.Ordinal);
        Assert.Equal(100, answers[2].GetProperty("readings")[0].GetProperty("rated_v").GetDouble());
        Assert.Equal("No rule for value codes reads \"XYZZY\".", answers[3].GetProperty("error").GetProperty("say").GetString());
        // People get a line a reading, and what it stands on narrows them down.
        (code, talk) = await run.Of("value", "104", "--sort", "capacitor");
        Assert.Equal((ExitCodes.Done, "104: 100 nF (capacitor digits, EIA-198), over 99 %"), (code, Assert.Single(talk.Out)));
        Assert.Equal(ExitCodes.Refused, (await run.Of("value", "red-red")).Code);
        Assert.Equal(ExitCodes.Usage, (await run.Of("value", "104", "--sort", "chip")).Code);
    }

    [Fact]
    public async Task Date_says_what_it_cannot_read()
    {
        Assert.Equal(ExitCodes.Look, (await run.Of("date", "0403", "9999", "--json")).Code);
        var (code, talk) = await run.Of("date", "x");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Equal("'x' has no reading as a date.", Assert.Single(talk.Said));
        var (usage, said) = await run.Of("date", "0403", "--between", "foo");
        Assert.Equal(ExitCodes.Usage, usage);
        Assert.Equal("'foo' is not a span of time; write two months, weeks, days or years with two dots between, such as 2019-01..2022-06.", Assert.Single(said.Said));
    }

    [Fact]
    public async Task Measure_finds_a_rendered_chip_within_its_interval()
    {
        var board = SceneRenderer.Render(Brindle.MainTop());
        using (var file = File.Create(run["board.png"])) board.WritePng(file);
        var ruler = board.Ruler!.Value;
        var chip = board.Parts.Single(part => part.Part.Spot == "U1");
        File.WriteAllText(run["job.json"], FormattableString.Invariant($$"""
            {"image":"board.png","reference":[{"from":[{{ruler.From.X}},{{ruler.From.Y}}],"to":[{{ruler.To.X}},{{ruler.To.Y}}],"length_mm":30,"u_mm":0.02,"height_mm":0}],
             "click_u_px":1.0,"camera_distance_mm":120,"target":[{"id":"U1 length","from":[{{chip.Left.X}},{{chip.Left.Y}}],"to":[{{chip.Right.X}},{{chip.Right.Y}}],"height_mm":0.85}]}
            """));
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        Assert.Equal(ExitCodes.Done, code);
        var answer = CommandRun.Only(talk);
        Assert.Equal(["format", "targets"], CommandRun.Keys(answer));
        var target = answer.GetProperty("targets")[0];
        Assert.Equal(["id", "value_mm", "u_mm", "interval90_mm", "snap", "warnings"], CommandRun.Keys(target));
        Assert.InRange(6.0, target.GetProperty("interval90_mm")[0].GetDouble(), target.GetProperty("interval90_mm")[1].GetDouble());
        Assert.Equal(["mm", "kind", "likelihood_ratio"], CommandRun.Keys(target.GetProperty("snap")));
        Assert.Equal(6.0, target.GetProperty("snap").GetProperty("mm").GetDouble());
    }

    [Fact]
    public async Task Measure_says_every_fault_of_a_job_at_once()
    {
        var (code, talk) = await run.With("""{"image":"gone.png"}""", "measure", "-", "--json");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Equal(["The job says nothing of known size. Give “reference” (a length that is known: from, to, length_mm), “points” (four places or more that are known on the board: at, mm), “ruler” (a row of its lines: from, to), “pattern” (a checkerboard or dot grid in the picture: pitch_mm) or “calibration” (another picture of one, by the same camera and zoom: image, pitch_mm).", "\"target\" should be a list of at least one length to find."], talk.Said);
        var (gone, said) = await run.Of("measure", "gone.json");
        Assert.Equal(ExitCodes.Refused, gone);
        Assert.Equal("There is no file 'gone.json'.", Assert.Single(said.Said));
    }

    [Fact]
    public async Task Catalogue_counts_searches_and_takes_a_users_own_parts_whole_or_not_at_all()
    {
        var (_, stats) = await run.Of("catalogue", "stats", "--json");
        Assert.Equal(["format", "parts", "order_codes", "rows", "kind", "class", "maker", "confidence", "filled"], CommandRun.Keys(CommandRun.Only(stats)));
        var (_, found) = await run.Of("catalogue", "search", "N52832", "--json");
        Assert.Equal("""{"format":1,"query":"N52832","rows":[{"part":"nRF52832","maker":"Nordic Semiconductor","class":"radio SoC","package":"QFN-48","confidence":"published"}],"total":1}""", Assert.Single(found.Out));

        File.WriteAllText(run["good.csv"], "part,maker,class,marks\nBRINDLE7,Ottermill Works,lamp driver,B7K/??\n");
        var (added, import) = await run.Of("catalogue", "import", run["good.csv"], "--json");
        Assert.Equal(ExitCodes.Done, added);
        Assert.Equal("""{"format":1,"added":1,"merged":0,"refused":[]}""", Assert.Single(import.Out));
        var (_, named) = await run.With("""{"id":"U4","evidence":{"mark_lines":["B7K","21"]}}""", "name", "-", "--json");
        Assert.Equal("BRINDLE7", CommandRun.Only(named).GetProperty("candidates")[0].GetProperty("part").GetString());

        File.WriteAllText(run["bad.csv"], "part,maker,class,body_l_mm\nBRINDLE8,Ottermill Works,lamp,2\nBRINDLE9,Ottermill Works,lamp,wide\n");
        var (bad, refused) = await run.Of("catalogue", "import", run["bad.csv"], "--json");
        Assert.Equal(ExitCodes.Refused, bad);
        var answer = CommandRun.Only(refused);
        Assert.Equal(["format", "added", "merged", "refused"], CommandRun.Keys(answer));
        Assert.Equal(["line", "say"], CommandRun.Keys(answer.GetProperty("refused")[0]));
        Assert.Equal(3, answer.GetProperty("refused")[0].GetProperty("line").GetInt32());
        var (_, gone) = await run.Of("catalogue", "search", "BRINDLE8", "--json");
        Assert.DoesNotContain("BRINDLE8\",\"maker", Assert.Single(gone.Out), StringComparison.Ordinal);
    }
}
