using ClassKit.Exercises.Cohorts;

namespace ClassKit.Desk.Kitchen;

/// <summary>What a column of a class list is taken for, in words.</summary>
internal static class FieldWords
{
    public static string Of(RosterField field) =>
        field switch
        {
            RosterField.Id => "id",
            RosterField.Name => "name",
            RosterField.FirstName => "first name",
            RosterField.LastName => "last name",
            RosterField.Email => "e-mail",
            RosterField.Team => "team",
            RosterField.LargePrint => "large print",
            RosterField.ExtraTime => "extra time",
            RosterField.Due => "due",
            RosterField.LeavesOut => "leaves out",
            RosterField.ExcusedFrom => "excused from",
            RosterField.Formerly => "formerly",
        };
}
