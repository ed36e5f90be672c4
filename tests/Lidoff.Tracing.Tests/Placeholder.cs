namespace Lidoff.Tracing.Tests;
