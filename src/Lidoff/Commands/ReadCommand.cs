using System.CommandLine;
using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Reading;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Commands;

/// <summary><c>lidoff read IMAGE… [--box x,y,w,h] [--upright] [--bands] [--parts] [--json]</c>: marks in pictures or crops; with <c>--spot</c> or <c>--all</c> those of a dossier, stored once.</summary>
public sealed class ReadCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Reads marks in pictures: each line with how probable it is, and place by place what else may stand there. With --spot or --all it reads the marks of a dossier's spots and stores them; what a person typed counts before them.";

    /// <inheritdoc/>
    public string Example => "read chip.jpg --box 120,80,300,200 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var names = new Argument<string[]>("IMAGE") { Description = "Pictures, whole or cut out; with --spot or --all the short name of a dossier.", Arity = ArgumentArity.OneOrMore };
        var box = new Option<string?>("--box") { Description = "Part of the picture to read: left, top, width and height in px.", HelpName = "x,y,w,h" };
        var bands = new Option<bool>("--bands") { Description = "Reads the colour bands of an axial part instead of a mark: the picture, or the box, shows one part." };
        var upright = new Option<bool>("--upright") { Description = "The text runs to the right: do not look for a turn." };
        var parts = new Option<bool>("--parts") { Description = "The picture shows a whole board: find the parts on it and read each." };
        var spots = new Option<string[]>("--spot") { Description = "Reads the mark of this spot of a dossier, once more where it was read; may be given several times.", HelpName = "SPOT" };
        var all = new Option<bool>("--all") { Description = "Reads the marks of all spots of a dossier that neither these networks nor a person have read." };
        var marked = new Option<bool>("--marked") { Description = "With --all: also marks that a person has read." };
        var json = new Option<bool>("--json") { Description = "One JSON object a picture or mark on standard output." };
        command.Arguments.Add(names);
        foreach (var option in new Option[] { box, upright, bands, parts, spots, all, marked, json }) command.Options.Add(option);
        // What is wrong with a call is said all at once, with what the parser finds.
        command.Validators.Add(result =>
        {
            if (WrongCall.LacksValue(result)) return;
            var stored = result.GetValue(all) || result.GetValue(spots) is { Length: > 0 };
            if (result.GetValue(box) is { } text && Box(text) is { Ok: false } fault) result.AddError(fault.Faults[0].Say);
            if (stored && (result.GetValue(box) is not null || result.GetValue(upright) || result.GetValue(bands) || result.GetValue(parts))) result.AddError(CommandSentences.ReadPicturesOnly);
            if (result.GetValue(parts) && !result.GetValue(bands) && (result.GetValue(box) is not null || result.GetValue(upright))) result.AddError(CommandSentences.ReadPartsWhole);
            if (result.GetValue(bands) && (result.GetValue(upright) || result.GetValue(parts))) result.AddError(CommandSentences.ReadBandsUpright);
            if (stored && result.GetResult(names)?.Tokens.Count > 1) result.AddError(CommandSentences.ReadOneDossier);
            if (result.GetValue(all) && result.GetValue(spots) is { Length: > 0 }) result.AddError(CommandSentences.ReadSpotOrAll);
            if (result.GetValue(marked) && !result.GetValue(all)) result.AddError(CommandSentences.ReadMarkedWithAll);
        });
        command.SetAction((parsed, stop) =>
        {
            // Bands want no network.
            if (parsed.GetValue(bands)) return Task.FromResult(BandsRead.Run(seat, parsed.GetValue(names)!, parsed.GetValue(box) is { } around ? Box(around).Value : null, parsed.GetValue(json), stop));
            using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(seat.ProgramFolder));
            var (given, talk) = (parsed.GetValue(names)!, parsed.GetValue(json));
            var wanted = parsed.GetValue(spots) is { Length: > 0 } chosen ? chosen : null;
            if (parsed.GetValue(parts)) return Task.FromResult(PartsOfPictures.Run(seat, given, talk, networks, stop));
            if (wanted is null && !parsed.GetValue(all)) return Task.FromResult(PicturesRead.Run(seat, given, parsed.GetValue(box) is { } text ? Box(text).Value : null, parsed.GetValue(upright), talk, networks, stop));
            return Task.FromResult(Desk.Within(seat, parsed, workspace =>
            {
                var opened = Desk.Dossier(seat, workspace, given[0]);
                if (!opened.TryValue(out var open)) return Desk.Refuse(seat, opened.Faults);
                return networks.Troubles.Count > 0 ? Desk.Refuse(seat, networks.Troubles) : new SpotsRead(seat, open, networks, talk).Run(wanted, parsed.GetValue(marked), stop);
            }));
        });
    }

    private static Outcome<PictureRegion?> Box(string text)
    {
        var parts = text.Split(',');
        var numbers = new double[4];
        var good = parts.Length == 4;
        for (var i = 0; good && i < 4; i++) good = double.TryParse(parts[i].Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) && double.IsFinite(numbers[i]);
        return good && numbers[2] > 0 && numbers[3] > 0 ? (PictureRegion?)PictureRegion.Box(numbers[0], numbers[1], numbers[2], numbers[3]) : ReadingSentences.NoBox(text);
    }
}
