using System.Text;
using Lidoff.Catalogue.Importing;
using Lidoff.Catalogue.Tables;
using Lidoff.TestSupport;

namespace Lidoff.Catalogue.Tests.Importing;

public sealed class ImportShelfTests
{
    [Fact]
    public void What_is_kept_comes_back_in_order_with_its_answers()
    {
        using var folder = new TempFolder();
        var shelf = ImportShelf.Of(folder.Path);
        Assert.Empty(shelf.Sources());
        Assert.Equal(1, Add(shelf, "part\nOWN-1\n", "../we ird/ü-name.csv").Added);
        Assert.Equal(1, Add(shelf, "part;body_l_mm\nOWN-2;5,275\n", "b.csv", comma: true).Added);
        Assert.Equal(["_-name.csv", "b.csv"], shelf.Sources().Select(s => s.FileName));
        using var catalogue = PartCatalogue.Open(ShippedTables.OwnFolder, Path.Combine(folder.Path, "cache"), shelf.Sources()).Value;
        Assert.NotNull(catalogue.Find("OWN-1"));
        Assert.Equal(5.275, catalogue.Find("OWN-2")!.Packages[0].LengthMm);
    }

    [Fact]
    public void Nothing_of_a_refused_file_is_kept()
    {
        using var folder = new TempFolder();
        var shelf = ImportShelf.Of(folder.Path);
        Assert.Single(Add(shelf, "part,body_l_mm\nOWN-1,3\nOWN-2,6000\n", "a.csv").Refused);
        Assert.Empty(shelf.Sources());
    }

    [Fact]
    public void The_same_bytes_are_kept_once()
    {
        using var folder = new TempFolder();
        var shelf = ImportShelf.Of(folder.Path);
        Add(shelf, "part\nOWN-1\n", "a.csv");
        Add(shelf, "part\nOWN-1\n", "b.csv");
        Assert.Single(shelf.Sources());
    }

    [Fact]
    public void What_a_crash_left_behind_is_not_an_import()
    {
        using var folder = new TempFolder();
        var shelf = ImportShelf.Of(folder.Path);
        Add(shelf, "part\nOWN-1\n", "a.csv");
        File.WriteAllText(Path.Combine(folder.Path, "catalogue", ".h4lf.wr1"), "part\nOWN-");
        File.WriteAllText(Path.Combine(folder.Path, "catalogue", "notes.txt"), "");
        Assert.Single(shelf.Sources());
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_a_sentence()
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "catalogue"), "a file, not a folder");
        var refused = Assert.Single(Add(ImportShelf.Of(folder.Path), "part\nOWN-1\n", "a.csv").Refused);
        Assert.StartsWith("The import could not be kept at ", refused.Say, StringComparison.Ordinal);
    }

    private static ImportResult Add(ImportShelf shelf, string text, string name, bool? comma = null) =>
        shelf.Add(Encoding.UTF8.GetBytes(text), name, Shipped.Parts, new ImportOptions(comma), out _);
}
