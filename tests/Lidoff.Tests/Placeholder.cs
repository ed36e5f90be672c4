namespace Lidoff.Tests;
