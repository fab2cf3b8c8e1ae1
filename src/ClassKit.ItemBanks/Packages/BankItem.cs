using System.Xml.Linq;
using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Packages;

/// <summary>One item of a bank, written when its package is.</summary>
/// <param name="Identifier">Names it within the bank.</param>
/// <param name="Exercise">What it asks.</param>
/// <param name="Write">Makes the same item each time.</param>
internal sealed record BankItem(string Identifier, Exercise Exercise, Func<XElement> Write);
