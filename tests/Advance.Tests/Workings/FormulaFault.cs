namespace Advance.Tests.Workings;

/// <summary>A formula that cannot be read, or that names what was not put in.</summary>
internal sealed class FormulaFault(string what) : Exception(what);
