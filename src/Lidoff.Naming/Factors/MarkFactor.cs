using Lidoff.Naming.Asking;
using Lidoff.Naming.Marks;

namespace Lidoff.Naming.Factors;

/// <summary>What stands on the body, by the mark model.</summary>
public sealed class MarkFactor : ILikelihoodFactor
{
    /// <inheritdoc/>
    public string Evidence => "mark";

    /// <inheritdoc/>
    public int Order => 10;

    /// <summary>The mark of another spot written down for this one, a relabelled part, a number of the brand's own.</summary>
    public double BlunderRate => 0.01;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.Mark is { IsBlank: false };

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new MarkOpinion(question, BlunderRate);

    private sealed class MarkOpinion(FactorQuestion question, double blunderRate) : IFactorReading, ISiblingReading
    {
        private readonly MarkScores scores = MarkScores.Of(question.Evidence.Mark!, question.Catalogue, blunderRate);
        private readonly string read = question.Evidence.Mark!.Best();

        public double Part(int index) => scores.Part(index);

        public double None(int group) => scores.None;

        public IEnumerable<(int Group, int Part, double Log)> Siblings => scores.Siblings();

        public string Say(int index) => scores.BestForm(index) is { } form ? FactorSentences.Mark(read, MarkText.Of(form), form.Kind, MarkFit.Of(read, form)) : FactorSentences.NoMark(read);
    }
}
