using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Lidoff.Catalogue;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Measuring;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Benchmarks;

/// <summary>
/// One edit in a dossier of 200 spots, 5,000 entries and 500 pictures: it touches only its dependants (counted) and costs at most
/// 2 % of folding and computing everything.
/// </summary>
public sealed class OneEdit : IBenchmark
{
    private const string Dossier = "d";
    private const int Spots = 200, Pictures = 500, Entries = 5000;

    /// <inheritdoc/>
    public string Name => "one-edit";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var parts = PartCatalogue.Load(Path.Combine(place.Root, "data", "catalogue")).Value.Parts;
        var ranker = new Lazy<Ranker>(new Ranker(new NamingCatalogue(parts)));
        using var store = new MemoryEntryStore(new WriterSeed(SHA256.HashData("bench"u8)), TimeProvider.System);
        Fill(store, parts.Where((_, i) => i % 37 == 0).Select(part => part.Name).ToList());
        var entries = store.Read(Dossier).Value.Entries;

        // A first whole run warms the code; the second is the baseline.
        Whole(entries, ranker, out _, out _);
        var watch = Stopwatch.StartNew();
        Whole(entries, ranker, out var fold, out var model);
        var whole = watch.Elapsed.TotalMilliseconds;

        var edits = new List<double>();
        long computed = 0;
        for (var i = 0; i < 21; i++)
        {
            var stored = Note(store, $$"""{"kind":"length","spot":"U{{(i * 7) % Spots}}","what":"width","mm":{{4 + i}}.01,"u_mm":0.02,"instrument":"caliper"}""");
            model.Graph.ResetCounts();
            watch.Restart();
            fold.Apply(stored);
            model.Feed(fold);
            Ask(model);
            edits.Add(watch.Elapsed.TotalMilliseconds);
            computed = model.Graph.Counts().Sum(count => count.Computed);
        }

        var edit = edits.Order().ElementAt(edits.Count / 2);
        return
        [
            new Row(Text($"one edit among {entries.Count} entries, {Spots} spots, {Pictures} pictures"), Text($"{edit:0.0} ms"), Text($"everything anew {whole:0} ms"), Text($"{edit / whole:0.0000}"), "<= 0.02", edit / whole <= 0.02),
            new Row("steps run again by it", computed.ToString(CultureInfo.InvariantCulture), "its length, evidence, name and the values on them", "", "<= 6", computed <= 6),
        ];
    }

    private static void Whole(IReadOnlyList<StoredEntry> entries, Lazy<Ranker> ranker, out Fold fold, out DossierModel model)
    {
        fold = new Fold(Dossier, Desk.Kinds);
        fold.Apply(entries);
        model = new DossierModel(ranker, "bench", _ => new PictureFrame(4000, 3000));
        model.Feed(fold);
        Ask(model);
    }

    private static void Ask(DossierModel model)
    {
        for (var i = 0; i < Spots; i++)
        {
            model.Value(Text($"length:U{i}:width"));
            model.Value(Text($"part:U{i}"));
        }
    }

    private static void Fill(MemoryEntryStore store, List<string> names)
    {
        var drafts = Enumerable.Range(0, Pictures).Select(i => FileKind.Draft(Dossier, new FileAdded(Text($"p{i}.jpg"), EntryCodec.Hash(Encoding.UTF8.GetBytes(Text($"p{i}"))), 1000, "image/jpeg", "add"))).ToList();
        store.Append(drafts);
        var lines = new List<string>();
        for (var i = 0; i < Pictures; i++) lines.Add($$"""{"kind":"scale","picture":"p{{i}}.jpg","from":[0,0],"to":[2000,0],"length_mm":20,"u_mm":0.02}""");
        for (var i = 0; i < Spots; i++)
        {
            lines.Add($$"""{"kind":"spot","spot":"U{{i}}","picture":"p{{i}}.jpg","point":[100,100],"role":"chip"}""");
            lines.Add($$"""{"kind":"mark","spot":"U{{i}}","lines":["{{names[i % names.Count]}}"]}""");
        }

        for (var i = 0; lines.Count < Entries - Pictures; i++)
        {
            var at = 200 + (i % 50);
            lines.Add($$"""{"kind":"length","picture":"p{{i % Pictures}}.jpg","spot":"U{{i % Spots}}","what":"width","from":[100,{{at}}],"to":[{{600 + (i % 90)}},{{at}}]}""");
        }

        Note(store, string.Join('\n', lines));
    }

    private static IReadOnlyList<StoredEntry> Note(MemoryEntryStore store, string lines)
    {
        var batch = new NoteReader(Desk.Kinds, prefix => store.Find(Dossier, prefix)).Read(Dossier, Encoding.UTF8.GetBytes(lines));
        return store.Append(batch.Drafts).Value;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
