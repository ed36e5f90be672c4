using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;
using NetVips;
using static Lidoff.Browser.Tests.Walks.Pointer;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The first three minutes from an empty bench to a labelled picture on the disk, and what that picture says and does not say.</summary>
public sealed class ExportWalk(TheBrowser browser) : BrowserTest(browser)
{
    private const string Hostile = "<script>window.hit=1</script> & \"lamp\" ]]> </desc>";
    private static readonly string[] Labels = ["radio beside the antenna", "J flat cable because it goes to the lamp", Hostile];

    [Fact]
    public async Task A_dropped_picture_goes_home_labelled_with_a_true_scale_bar_and_without_its_owner()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await window.Go("/");
        await Drop(window, "Seacrow-kitchen.jpg", Photo.Bytes);
        await window.Arrives("/dossiers/device-1/see/*");
        var (left, right) = await Squares(window.Page);
        await ClickAt(window, left.X, left.Y);
        await ClickAt(window, right.X, right.Y);
        await window.Enter("#scale", "20 mm ± 0.01");
        await Pointing(window);
        foreach (var (label, i) in Labels.Select((label, i) => (label, i)))
        {
            // Along the line between the squares, well away from each other.
            var share = 0.25 + (0.25 * i);
            await ClickAt(window, left.X + ((right.X - left.X) * share), left.Y + ((right.X - left.X) * (share - 0.5) * 0.4));
            await Say(window, label);
        }

        await bench.Stored("device-1", "three spots", session => session.View.Live<SpotSighting>().Count == 3);
        Assert.Equal("drop", bench.Stored("device-1", session => session.View.Live<FileAdded>().Single().Value.From));
        var (svgName, svg) = await TakeHome(window, "e");
        var (pngName, png) = await TakeHome(window, "Alt+e");
        Assert.Matches("^device-1-picture\\.svg$", svgName);
        Assert.Matches("^device-1-picture\\.png$", pngName);
        var drawing = Read(svg);
        var (width, bar) = (Size(drawing), Bar(drawing));
        // 400 px of the picture were said to be 20 mm; a click is good to a pixel of the screen at either end.
        Assert.InRange(bar.Px / bar.Mm, 20 * 0.99, 20 * 1.01);
        Drawn(png, width, bar.Mm);
        Silent(svg, png, drawing);
        Assert.False(await window.Page.EvaluateAsync<bool>("'hit' in window"));
    }

    private static async Task<(string Name, byte[] Bytes)> TakeHome(Window window, string key)
    {
        var download = await window.Page.RunAndWaitForDownloadAsync(() => window.Page.Keyboard.PressAsync(key));
        var bytes = await File.ReadAllBytesAsync(await download.PathAsync());
        await File.WriteAllBytesAsync(Path.Combine(Root, "artifacts", "test", "shots", "ExportWalk" + Path.GetExtension(download.SuggestedFilename)), bytes);
        return (download.SuggestedFilename, bytes);
    }

    // XML that holds nothing but drawing, with every label in the words for those who cannot see it.
    private static XElement Read(byte[] svg)
    {
        var drawing = XElement.Parse(Encoding.UTF8.GetString(svg));
        string[] known = ["svg", "title", "desc", "rect", "path", "image", "text"];
        Assert.All(drawing.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, known));
        Assert.DoesNotContain(drawing.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        var said = Element(drawing, "desc").Value;
        Assert.Contains("U1: radio beside the antenna", said, StringComparison.Ordinal);
        Assert.Contains("J1: flat cable", said, StringComparison.Ordinal);
        Assert.Contains(Hostile, said, StringComparison.Ordinal);
        return drawing;
    }

    private static (int Width, int Height) Size(XElement drawing) => ((int)drawing.Attribute("width")!, (int)drawing.Attribute("height")!);

    // The bar is the longest white box; the title says how long it is meant to be.
    private static (double Mm, double Px) Bar(XElement drawing)
    {
        var says = Regex.Match(Element(drawing, "title").Value, "scale bar of ([0-9.]+) mm");
        Assert.True(says.Success, Element(drawing, "title").Value);
        var boxes = drawing.Elements(drawing.Name.Namespace + "rect").Where(rect => (string)rect.Attribute("fill")! == "#FFFFFF");
        return (double.Parse(says.Groups[1].Value, CultureInfo.InvariantCulture), boxes.Max(rect => (double)rect.Attribute("width")!));
    }

    // Measured in the PNG itself, by another's decoder: squares and bar tell the same scale.
    private static void Drawn(byte[] png, (int Width, int Height) size, double mm)
    {
        using var picture = Image.NewFromBuffer(png);
        Assert.Equal(size, (picture.Width, picture.Height));
        var bands = picture.Bands;
        var pixels = picture.WriteToMemory<byte>();
        var magenta = new List<double>();
        var longest = 0;
        for (var y = 0; y < size.Height; y++)
        {
            var run = 0;
            for (var x = 0; x < size.Width; x++)
            {
                var at = ((y * size.Width) + x) * bands;
                var (red, green, blue) = (pixels[at], pixels[at + 1], pixels[at + 2]);
                if (red > 200 && green < 60 && blue > 200) magenta.Add(x + 0.5);
                run = red == 255 && green == 255 && blue == 255 ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
        }

        var middle = (magenta.Min() + magenta.Max()) / 2;
        var apart = magenta.Where(x => x > middle).Average() - magenta.Where(x => x < middle).Average();
        Assert.InRange(longest / mm, apart / 20 * 0.99, apart / 20 * 1.01);
    }

    // Nothing of the owner, the place or the camera, in clear or packed away in a chunk or segment.
    private static void Silent(byte[] svg, byte[] png, XElement drawing)
    {
        var inside = Convert.FromBase64String(((string)Element(drawing, "image").Attribute("href")!)["data:image/jpeg;base64,".Length..]);
        foreach (var bytes in new[] { svg, png, inside }) Photo.NothingIn(bytes, "kitchen");
        Photo.NoTags(inside);
        // PNG specification, third edition, 11.3.3 and 11.3.4: what could carry words, a time or EXIF data.
        Assert.DoesNotContain(Files.Chunks(png), chunk => chunk is "tEXt" or "zTXt" or "iTXt" or "eXIf" or "tIME");
    }

    private static XElement Element(XElement drawing, string name) => drawing.Element(drawing.Name.Namespace + name)!;
}
