using Lidoff.Evidence.Registering;
using Lidoff.Telling.Documents;

namespace Lidoff.Telling.Reporting;

/// <summary>One section of the report, found by type. A figure it prints goes through <see cref="ReportContext.Value"/>, so that it leads somewhere.</summary>
public interface IReportSection : INamed
{
    /// <summary>Place in the report, rising; unique.</summary>
    int Place { get; }

    /// <summary>True where it prints grades: what they mean stands before the first of these.</summary>
    bool Graded => false;

    /// <summary>The section, or null where the dossier has nothing for it.</summary>
    Section? Build(ReportContext context);
}
