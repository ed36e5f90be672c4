using System.IO.Compression;
using System.Text;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Tests.Tables;

public sealed class ShippedTablesTests
{
    [Fact]
    public void Every_row_of_every_part_table_is_reachable_from_exactly_one_part()
    {
        var reached = Shipped.Parts.Parts.SelectMany(p => p.Rows).ToList();
        Assert.Equal(reached.Count, reached.ToHashSet().Count);
        foreach (var file in Shipped.Tables.Manifest.Files.Where(f => f.Kind == "parts"))
            Assert.Equal(file.Rows, reached.Count(r => r.Table == file.File));
    }

    // Row counts of the source tables, stated by those who made them (1,815 + 5,542 + 641 + 2,373; outlines 1,587).
    [Fact]
    public void Row_counts_are_those_of_the_sources()
    {
        var rows = Shipped.Tables.Manifest.Files.ToDictionary(f => f.File, f => f.Rows);
        Assert.Equal(1815, rows["facts.csv.gz"]);
        Assert.Equal(5542, rows["pinouts.csv.gz"]);
        Assert.Equal(641, rows["topmarks.csv.gz"]);
        Assert.Equal(2373, rows["wearables.csv.gz"]);
        Assert.Equal(1587, rows["outlines.csv.gz"] + rows["footprints.csv.gz"]);
    }

    [Fact]
    public void Every_table_has_its_licence_beside_it_and_share_alike_tables_say_so()
    {
        foreach (var file in Shipped.Tables.Manifest.Files)
        {
            var notice = Path.Combine(ShippedTables.OwnFolder, file.Notice);
            Assert.True(File.Exists(notice), file.Notice);
            var text = File.ReadAllText(notice);
            Assert.Contains(file.File, text, StringComparison.Ordinal);
            if (file.Licence != "CC-BY-SA-4.0") continue;
            Assert.Contains("https://creativecommons.org/licenses/by-sa/4.0/", text, StringComparison.Ordinal);
            Assert.Contains("Attribution", text, StringComparison.Ordinal);
            Assert.Contains("Changes", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rows_from_share_alike_libraries_stand_only_in_share_alike_tables()
    {
        foreach (var file in Shipped.Tables.Manifest.Files)
        {
            using var text = new StreamReader(new GZipStream(File.OpenRead(Path.Combine(ShippedTables.OwnFolder, file.File)), CompressionMode.Decompress), Encoding.UTF8);
            var records = new CsvRecords(text.ReadToEnd(), ',');
            var source = records.Next()!.IndexOf("source");
            while (records.Next() is { } cells)
                Assert.Equal(file.Licence == "CC-BY-SA-4.0", cells[source].StartsWith("kicad-", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_changed_table_is_refused_by_name()
    {
        var folder = Directory.CreateTempSubdirectory("lidoff-tables-").FullName;
        try
        {
            foreach (var path in Directory.EnumerateFiles(ShippedTables.OwnFolder)) File.Copy(path, Path.Combine(folder, Path.GetFileName(path)));
            File.AppendAllText(Path.Combine(folder, "facts.csv.gz"), "x");
            var fault = Assert.Single(PartCatalogue.Load(folder).Faults);
            Assert.Equal($"{Path.Combine(folder, "facts.csv.gz")} is not the file that the manifest describes: its hash differs. Put the shipped file back.", fault.Say);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_missing_folder_is_a_sentence() =>
        Assert.StartsWith("The shipped catalogue is missing", Assert.Single(PartCatalogue.Load("/nowhere/at/all").Faults).Say, StringComparison.Ordinal);
}
