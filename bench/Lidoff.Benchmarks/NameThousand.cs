using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Lidoff.Catalogue;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Benchmarks;

/// <summary>
/// <c>lidoff name</c> on 1,000 lines, at most 10 s including its start, beside the plain way: the catalogue's text search with one misread sign
/// over the same marks. Every second mark has one unread character; sizes and pins as the catalogue has them.
/// </summary>
public sealed class NameThousand : IBenchmark
{
    private const int Lines = 1000;

    /// <inheritdoc/>
    public string Name => "name-thousand";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("name-thousand");
        using var catalogue = PartCatalogue.Open(Path.Combine(place.Root, "data", "catalogue"), folder, []).Value;
        var asked = catalogue.Parts.Where(part => part.Name.Length is >= 5 and <= 14 && part.Packages.Count > 0).ToList();
        var questions = Enumerable.Range(0, Lines).Select(i => (Part: asked[i * 7919 % asked.Count], Mark: Mark(asked[i * 7919 % asked.Count].Name, i))).ToList();
        var file = Path.Combine(folder, "lines.jsonl");
        File.WriteAllLines(file, questions.Select((question, i) => Line(question.Part, question.Mark, i)));

        // The first run prepares the caches of its workspace, as a user's first run does.
        Timed.Run(place.Program, ["name", file, "--json", "--workspace", folder]);
        var seconds = Enumerable.Range(0, 3).Select(_ => Timed.Run(place.Program, ["name", file, "--json", "--workspace", folder]).Seconds).Order().ElementAt(1);

        catalogue.Search("warm", 1);
        var watch = Stopwatch.StartNew();
        var found = questions.Count(question => catalogue.Search(question.Mark, 1).Rows.Any(row => row.Part.Name == question.Part.Name));
        var plain = watch.Elapsed.TotalSeconds;
        return
        [
            new Row(
                string.Create(CultureInfo.InvariantCulture, $"name, {Lines} lines, start included"),
                string.Create(CultureInfo.InvariantCulture, $"{seconds:0.0} s"),
                string.Create(CultureInfo.InvariantCulture, $"text search alone {plain:0.0} s, first row right {(double)found / Lines:0.00}"),
                (seconds / plain).ToString("0.0", CultureInfo.InvariantCulture),
                "<= 10 s",
                seconds <= 10),
        ];
    }

    private static string Mark(string name, int i) => i % 2 == 0 ? name : name.Remove(name.Length / 2, 1).Insert(name.Length / 2, "?");

    private static string Line(Part part, string mark, int i)
    {
        var package = part.Packages[0];
        var evidence = new Dictionary<string, object> { ["mark_lines"] = new[] { mark, (1601 + (i % 700)).ToString(CultureInfo.InvariantCulture) } };
        if (package is { LengthMm: { } length, WidthMm: { } width }) evidence["body_mm"] = new[] { length, width };
        if (package.Pins is { } pins) evidence["pins"] = pins;
        return JsonSerializer.Serialize(new { id = i.ToString(CultureInfo.InvariantCulture), evidence });
    }
}
