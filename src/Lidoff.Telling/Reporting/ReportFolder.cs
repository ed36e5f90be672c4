using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Writing;

namespace Lidoff.Telling.Reporting;

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
            var pictures = new List<ReportPicture>();
            foreach (var picture in Shown(dossier, say))
            {
                if (!Copy(dossier.Workspace.Files, picture, Path.Combine(folder, picture.File), out var faults)) foreach (var fault in faults) say(fault.Say);
                else pictures.Add(picture);
            }

            var document = ReportBuilder.Build(dossier.Session.View, dossier.Model, pictures, OpenDossier.Program);
            var written = new List<string>();
            foreach (var form in forms)
            {
                Put(Path.Combine(folder, "report." + form), Bytes(document, form));
                written.Add("report." + form);
            }

            written.AddRange(pictures.Select(picture => picture.File));
            return written;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return TellingSentences.NoOutput(folder, trouble.Message);
        }
    }

    /// <summary>A document in one of the <see cref="Forms"/>.</summary>
    public static byte[] Bytes(Document document, string form) => form switch
    {
        "html" => Encoding.UTF8.GetBytes(HtmlWriter.Write(document)),
        "md" => Encoding.UTF8.GetBytes(MarkdownWriter.Write(document)),
        _ => Json(document),
    };

    /// <summary>
    /// Pictures that somebody pointed at, measured in or gave a scale, in the order they were added, each with the name its copy will
    /// have; others stay at home. What cannot be opened is told to <paramref name="say"/>.
    /// </summary>
    public static IReadOnlyList<ReportPicture> Shown(OpenDossier dossier, Action<string> say)
    {
        var view = dossier.Session.View;
        var used = view.Live<ScaleSighting>().Select(scale => scale.Value.Picture)
            .Concat(view.Live<LengthSighting>().Select(length => length.Value.InPicture?.Picture ?? ""))
            .Concat(view.Live<ClickedShape>().Select(shape => shape.Value.Picture))
            .Concat(view.Live<SpotSighting>().Select(spot => spot.Value.Picture))
            .Concat(view.Live<LandmarkSighting>().Where(landmark => landmark.Value.At is not null).Select(landmark => landmark.Value.Picture))
            .Where(name => name.Length > 0).Distinct(StringComparer.Ordinal)
            .Select(dossier.Model.Picture).Where(picture => picture.Found).Select(picture => picture.Sha256).ToHashSet(StringComparer.Ordinal);
        var pictures = new List<ReportPicture>();
        foreach (var file in view.Live<FileAdded>().Select(sighting => sighting.Value).Where(file => used.Remove(file.Sha256)))
        {
            var header = dossier.Picture(file.Sha256, file.Name);
            if (header.TryValue(out var found))
                pictures.Add(new(file.Name, file.Sha256, found.Width, found.Height, "pictures/" + file.Sha256[..12] + SharedCopy.Ending(found)));
            else foreach (var fault in header.Faults) say(fault.Say);
        }

        return pictures;
    }

    /// <summary>Writes the copy of one picture that leaves the machine.</summary>
    public static Outcome<string> Copy(FileVault files, ReportPicture picture, Stream output) =>
        PictureFile.Read(files.PathOf(picture.Sha256), picture.Name).Then(header => SharedCopy.Write(files.PathOf(picture.Sha256), picture.Name, header, output));

    private static bool Copy(FileVault files, ReportPicture picture, string path, out IReadOnlyList<Fault> faults)
    {
        using var copy = new MemoryStream();
        var shared = Copy(files, picture, copy);
        faults = shared.Faults;
        if (shared.Ok) Put(path, copy.ToArray());
        return shared.Ok;
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
