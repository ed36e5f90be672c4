using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Telling.Writing;

namespace Lidoff;

/// <summary>
/// A report as a folder: the document in each form asked for, and under <c>pictures/</c> a copy of every picture it shows, upright and
/// without place, serial number or name of an owner. Each file is written beside its place and renamed into it.
/// </summary>
public static class ReportFolder
{
    /// <summary>The forms that can be written.</summary>
    public static IReadOnlyList<string> Forms { get; } = ["html", "md", "json"];

    /// <summary>Writes the report; the names of what was written, in order. What is odd about a picture is told to <paramref name="say"/>.</summary>
    public static Outcome<IReadOnlyList<string>> Write(OpenDossier dossier, string folder, IReadOnlyList<string> forms, Action<string> say)
    {
        try
        {
            var shown = Path.Combine(folder, "pictures");
            Directory.CreateDirectory(shown);
            var pictures = Pictures(dossier, shown, say);
            var document = ReportBuilder.Build(dossier.Session.View, dossier.Model, pictures, OpenDossier.Program);
            var written = new List<string>();
            foreach (var form in forms)
            {
                Put(Path.Combine(folder, "report." + form), form switch
                {
                    "html" => Encoding.UTF8.GetBytes(HtmlWriter.Write(document)),
                    "md" => Encoding.UTF8.GetBytes(MarkdownWriter.Write(document)),
                    _ => Json(document),
                });
                written.Add("report." + form);
            }

            written.AddRange(pictures.Select(picture => picture.File));
            return written;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return CommandSentences.NoOutput(folder, trouble.Message);
        }
    }

    /// <summary>Pictures that somebody pointed at, measured in or gave a scale, in the order they were added; others stay at home.</summary>
    private static List<ReportPicture> Pictures(OpenDossier dossier, string folder, Action<string> say)
    {
        var view = dossier.Session.View;
        var used = view.Live<ScaleSighting>().Select(scale => scale.Value.Picture)
            .Concat(view.Live<LengthSighting>().Select(length => length.Value.InPicture?.Picture ?? ""))
            .Concat(view.Live<SpotSighting>().Select(spot => spot.Value.Picture))
            .Where(name => name.Length > 0).Distinct(StringComparer.Ordinal)
            .Select(dossier.Model.Picture).Where(picture => picture.Found).Select(picture => picture.Sha256).ToHashSet(StringComparer.Ordinal);
        var pictures = new List<ReportPicture>();
        foreach (var file in view.Live<FileAdded>().Select(sighting => sighting.Value).Where(file => used.Remove(file.Sha256)))
        {
            var path = dossier.Workspace.Files.PathOf(file.Sha256);
            var header = PictureFile.Read(path, file.Name);
            if (!header.TryValue(out var found))
            {
                foreach (var fault in header.Faults) say(fault.Say);
                continue;
            }

            using var copy = new MemoryStream();
            var shared = SharedCopy.Write(path, file.Name, found, copy);
            if (!shared.TryValue(out var type))
            {
                foreach (var fault in shared.Faults) say(fault.Say);
                continue;
            }

            var name = file.Sha256[..12] + (type == "image/png" ? ".png" : ".jpg");
            Put(Path.Combine(folder, name), copy.ToArray());
            pictures.Add(new(file.Name, file.Sha256, found.Width, found.Height, "pictures/" + name));
        }

        return pictures;
    }

    private static byte[] Json(Document document)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            JsonDocumentWriter.Write(json, document);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Put(string path, byte[] bytes)
    {
        var beside = path + ".new";
        File.WriteAllBytes(beside, bytes);
        File.Move(beside, path, overwrite: true);
    }
}
