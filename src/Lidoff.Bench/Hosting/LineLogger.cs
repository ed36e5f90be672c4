using Microsoft.Extensions.Logging;

namespace Lidoff.Bench.Hosting;

/// <summary>Hands the web server's warnings and errors on, a line each.</summary>
internal sealed class LineLogger(Action<string> log) : ILoggerProvider, ILogger
{
    public ILogger CreateLogger(string categoryName) => this;

    public void Dispose()
    {
    }

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        if (IsEnabled(logLevel)) log(formatter(state, exception) + (exception is null ? "" : "\n" + exception));
    }
}
