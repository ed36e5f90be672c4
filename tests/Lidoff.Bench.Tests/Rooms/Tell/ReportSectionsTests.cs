using System.Text.RegularExpressions;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;
using Lidoff.Telling.Writing;

namespace Lidoff.Bench.Tests.Rooms.Tell;

/// <summary>What a reader must find in a report: what was asked, how it is joined, what is open, in words and units of the trade.</summary>
public sealed partial class ReportSectionsTests : IDisposable
{
    private readonly FakeBench bench = new();

    public ReportSectionsTests() => bench.Set(
        "d", "D",
        """{"kind":"spot","spot":"U1","role":"radio"}""",
        """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
        """{"kind":"touch","a":"U1.13","b":"GND","beep":true,"threshold_ohm":40}""",
        """{"kind":"rail","rail":"VSYS","v":3.0,"u_v":0.02,"from":"U4","to":["U1"]}""",
        """{"kind":"length","spot":"U1","what":"long side","mm":6.02,"u_mm":0.02,"instrument":"calliper"}""",
        """{"kind":"length","spot":"U1","what":"long side","mm":6.6,"u_mm":0.02,"instrument":"ruler"}""",
        """{"kind":"question","question":"Q1","text":"Which radio is it?","ties":["part:U1"]}""",
        """{"kind":"question","question":"Q2","text":"How long does it run?"}""",
        """{"kind":"cell","connected":true,"volts":3.9}""",
        """{"kind":"cell","connected":false}""",
        """{"kind":"state","name":"idle","says":"dark","current_ua":85000,"u_ua":4000,"lasts_s":28800}""",
        """{"kind":"spot","spot":"J9"}""",
        """{"kind":"mass","g":21.4,"u_g":0.01}""",
        """{"kind":"mark","spot":"U9","lines":["QQZZ7788"]}""",
        """{"kind":"decide","spot":"U9","not_listed":true,"why":"no maker has such a mark"}""");

    public void Dispose() => bench.Dispose();

    [Fact]
    public void Questions_stand_first_with_their_answers_and_open_ones_say_so()
    {
        Assert.Equal("questions", Sections()[0]);
        var rows = Rows("questions");
        Assert.StartsWith("Which radio is it? Q1 nRF52832", rows[1], StringComparison.Ordinal);
        Assert.Contains("How long does it run? Q2 open", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_is_told_as_it_was_last_and_a_current_in_the_unit_of_its_size()
    {
        var html = Plain(Section("opening"));
        Assert.Contains("The cell: 3.900 ± 0.010 V at its wires.", html, StringComparison.Ordinal);
        Assert.Contains("The cell: disconnected when last noted.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("The cell: connected", html, StringComparison.Ordinal);
        Assert.Contains("dark, lasts 8 h", html, StringComparison.Ordinal);
        Assert.Contains("85.0 ± 4.0 mA", html, StringComparison.Ordinal);
    }

    // A bare number was taken in the unit of its field, which a reader does not see; keys with strokes under them are for machines.
    [Fact]
    public void Inputs_of_a_number_stand_in_words_and_with_their_units()
    {
        bench.Set("d", "D", """{"kind":"reckon","reckoning":"R1","calculation":"runtime","inputs":{"capacity":"225 mAh ± 10","sleep_current":"5 ± 1","event_charge":"12","event_rate":"1800"}}""",
            """{"kind":"claim","claim":"C1","text":"It runs {reckoning:R1}."}""");
        var html = Plain(Html());
        foreach (var words in new[] { "capacity: 225 mAh ± 10", "sleep current: 5 ± 1 µA", "event charge: 12 µC", "event rate: 1800 1/h", "reserve: 0 % (assumed)", "sleep current (8" }) Assert.Contains(words, html, StringComparison.Ordinal);
        Assert.DoesNotContain("self_discharge 0", html, StringComparison.Ordinal);
    }

    // The newest of several currents of one state counts, and a reader must see which: the runtime is reckoned with it.
    [Fact]
    public void Of_two_currents_of_one_state_the_earlier_one_is_marked()
    {
        bench.Set("d", "D", """{"kind":"state","name":"worn","current_ua":610,"u_ua":40}""", """{"kind":"state","name":"worn","current_ua":980,"u_ua":50}""", """{"kind":"claim","claim":"C1","text":"Worn: {state:worn}."}""");
        var rows = Rows("opening");
        Assert.Contains(rows, row => row.StartsWith("worn (earlier)", StringComparison.Ordinal) && row.EndsWith("610 ± 40 µA", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.StartsWith("worn 980 ± 50 µA", StringComparison.Ordinal));
        Assert.Contains("state worn cannot draw 610 ± 40 µA and 980 ± 50 µA, unless it is two states", Plain(Section("quarrels")), StringComparison.Ordinal);
        Assert.Contains("The newest of 2 readings counts: 980 ± 50 µA; earlier: 610 ± 40 µA.", Plain(Section("because")), StringComparison.Ordinal);
    }

    // By hand: 40,012 h are 4.56 Julian years of 8766 h, 2,512 h are 0.29.
    [Fact]
    public void A_claim_that_left_its_interval_tells_what_readers_were_told_in_their_unit()
    {
        bench.Set("d", "D",
            """{"kind":"reckon","reckoning":"R1","calculation":"discharge_time","inputs":{"capacity":"261 mAh ± 25","current":"10 µA"}}""",
            """{"kind":"claim","claim":"C1","text":"It runs {reckoning:R1}."}""",
            """{"kind":"claim","claim":"C2","text":"U7 weighs {mass:U7}."}""",
            """{"kind":"publish","claims":[{"claim":"C2","program":"x","values":[{"reference":"mass:U7","rests_on":[]}]},{"claim":"C1","program":"x","values":[{"reference":"reckoning:R1","value":40012.3,"u":2511.7,"low":35900,"high":44200,"rests_on":[]}]}]}""");
        var html = Plain(Section("what-it-says"));
        Assert.Matches(@"It runs \d+00 ± \d+00 h \(\d\.\d\d ± 0\.\d\d years\)", html);
        // What was never measured was never told either.
        Assert.Contains("U7 weighs unknown. [unsupported: something it leans on is gone or was never measured]", html, StringComparison.Ordinal);
        Assert.Matches(@"it left its interval; published as 40000 ± 2500 h \(4\.56 ± 0\.29 years\), now \d+00 ± \d+00 h \(\d\.\d\d ± 0\.\d\d years\)\]", html);
    }

    [Fact]
    public void A_figure_names_what_it_rests_on_by_kind_and_not_by_hash()
    {
        var html = Plain(Section("because"));
        Assert.Contains("Rests on length 1, length 2.", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("Rests on [^.]*[0-9a-f]{12}", html);
    }

    [Fact]
    public void Nets_and_the_supply_are_there_with_how_they_are_known()
    {
        Assert.Contains("id=\"diagram-supply\"", Html(), StringComparison.Ordinal);
        Assert.Contains(Rows("circuit"), row => row.StartsWith("GND GND, U1.13 touched:", StringComparison.Ordinal));
    }

    // What does not connect is worth as much as what does, and so are ohms and volts (common practice, no source).
    [Fact]
    public void What_does_not_connect_and_what_was_read_stands_beside_the_nets_and_none_of_it_is_lost()
    {
        bench.Set("d", "D",
            """{"kind":"touch","a":"U1.4","b":"C1.1","beep":false}""", """{"kind":"touch","a":"U1.4","b":"J1.2","beep":false}""", """{"kind":"touch","a":"U1.4","b":"J1.3","open":true}""",
            """{"kind":"touch","a":"R1.1","b":"R1.2","ohms":2200,"u_ohm":22}""", """{"kind":"touch","a":"U4.1","b":"GND","volts":1.8,"u_v":0.02}""");
        var rows = Rows("circuit");
        Assert.Contains(rows, row => row == "U1.4 C1.1, J1.2 no beep 1 2");
        Assert.Contains(rows, row => row == "U1.4 J1.3 open 1");
        Assert.Contains(rows, row => row == "R1.1 R1.2 2.200 ± 0.022 kΩ 1");
        Assert.Contains(rows, row => row == "U4.1 GND 1.800 ± 0.020 V 1");
    }

    [Fact]
    public void The_first_section_with_grades_says_what_they_mean_and_its_questions_have_their_next_move()
    {
        Assert.Contains("A grade says how well a thing is known: E0 guess, E1 looks like, E2 one line of evidence", Plain(Section("questions")), StringComparison.Ordinal);
        Assert.DoesNotContain("A grade says", Plain(Section("parts")), StringComparison.Ordinal);
        bench.Set("d", "D", """{"kind":"reckon","reckoning":"R1","calculation":"capacity_from_energy","inputs":{"energy":"0.67 Wh ± 0.2","voltage":"3.7"}}""", """{"kind":"question","question":"Q3","text":"How much?","ties":["reckoning:R1"]}""");
        // Answered, and still wide: the board says what would help, and so does the report.
        Assert.Matches("^How much\\? Q3 .* mAh .*measure energy", Rows("questions").Single(row => row.StartsWith("How much?", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_cell_of_a_table_bears_its_heading_for_narrow_pages() => Assert.Contains("<td data-h=\"Net\">GND", Section("circuit"), StringComparison.Ordinal);

    [Fact]
    public void What_to_measure_next_is_a_table_with_minutes_and_risk()
    {
        var rows = Rows("unknown");
        Assert.StartsWith("Move For Minutes Bits Risk Why", rows[0], StringComparison.Ordinal);
        Assert.Contains(rows, row => row.Contains("How long does it run?", StringComparison.Ordinal));
    }

    [Fact]
    public void Rails_stand_in_words_with_their_voltage_and_where_they_go() =>
        Assert.Contains(Rows("circuit"), row => row.StartsWith("VSYS 3.000 ± 0.020 V U4 U1", StringComparison.Ordinal));

    [Fact]
    public void What_was_weighed_is_a_number_like_the_others() =>
        Assert.Contains(Rows("numbers"), row => row.Contains("21.400 ± 0.010 g", StringComparison.Ordinal) && row.EndsWith("weighed", StringComparison.Ordinal));

    [Fact]
    public void A_part_in_no_list_says_who_settled_it_and_which_part_the_weights_speak_of()
    {
        var because = Plain(Section("because"));
        Assert.Contains("A person said that it is in no list, because no maker has such a mark.", because, StringComparison.Ordinal);
        Assert.DoesNotContain("part at J9", because, StringComparison.Ordinal);
        Assert.Contains(Rows("parts"), row => row.StartsWith("J9 not read not looked at", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_figure_rests_on_is_named_in_words() => Assert.DoesNotMatch("Rests on <a[^>]*>[0-9a-f]{12}<", Html());

    // Decibans are tenths of a ban, ten times the common logarithm of odds (A. Turing, I. J. Good); dB would be read as decibels.
    [Fact]
    public void Weights_of_evidence_are_called_decibans() => Assert.DoesNotMatch(Decibels(), Html());

    [Fact]
    public void A_quarrel_names_what_fights_in_words_and_the_numbers_say_how_without_the_value_again()
    {
        var html = Plain(Section("quarrels"));
        // The one noted first or second: entries stand in the order of their ids.
        var between = html.Split("It is between ")[1];
        Assert.Contains("long side of U1: 6.02 ± 0.02 mm with calliper", between, StringComparison.Ordinal);
        Assert.Contains("long side of U1: 6.6 ± 0.02 mm with ruler", between, StringComparison.Ordinal);
        Assert.Contains(Rows("numbers"), row => row.EndsWith("read from calliper; read from ruler", StringComparison.Ordinal));
    }

    private string Html() => bench.View("d", dossier => HtmlWriter.Write(ReportBuilder.Build(dossier.Session.View, dossier.Model, [], OpenDossier.Program)))!;

    private List<string> Sections() => [.. SectionIds().Matches(Html()).Select(match => match.Groups[1].Value)];

    private string Section(string id) => Html().Split("<section id=\"" + id + "\"", 2)[1].Split("</section>", 2)[0];

    private List<string> Rows(string id) => [.. RowTags().Matches(Section(id)).Select(match => Plain(match.Value))];

    private static string Plain(string html) => Spaces().Replace(System.Net.WebUtility.HtmlDecode(Tags().Replace(html.Replace("</td>", " ", StringComparison.Ordinal).Replace("</th>", " ", StringComparison.Ordinal), "")), " ").Trim();

    [GeneratedRegex("<section id=\"([^\"]+)\"")]
    private static partial Regex SectionIds();

    [GeneratedRegex("<tr>.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex RowTags();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex("[0-9] dB\\b")]
    private static partial Regex Decibels();
}
