namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>
/// Shapes that random formulas are made of, by the kind of value they give. In braces: N any number, P a positive one, I a small whole one, T a text, L a truth value,
/// C a cell of numbers, R a column of numbers, S another as long, X cells of any kind, K a criterion, D a date, F a share of 1, M a number format, U a unit pair.
/// </summary>
internal static class FormulaTemplates
{
    public static readonly string[] Numbers =
    [
        "{N}+{N}", "{N}-{N}", "{N}*{N}", "{N}/{P}", "{P}^{I}", "-{N}", "+{N}", "({N})", "{N}%", "({N}-{N})*{F}", "-({N})^2", "{P}/{P}*{N}",
        "ABS({N})", "SIGN({N})", "SUM({R})", "SUM({N},{R},{C})", "SUM({R},{S})", "SUMSQ({R})", "PRODUCT({N},{F})", "SUMPRODUCT({R},{S})", "SUMPRODUCT(({R}>{N})*{S})", "SUMPRODUCT({R}*{S})",
        "POWER({P},{F})", "SQRT({P})", "EXP({F})", "LN({P})", "LOG10({P})", "LOG({P},2)", "LOG({P},{P}+1)", "MOD({N},{P})", "MOD({I},-3)", "QUOTIENT({N},{P})", "PI()*{N}", "SQRTPI({P})",
        "INT({N})", "TRUNC({N})", "TRUNC({N},{I})", "ROUND({N},{I})", "ROUND({N},-1)", "ROUND({N},2)", "ROUNDUP({N},{I})", "ROUNDDOWN({N},1)", "ROUNDUP({N},0)", "CEILING({P},{P})", "FLOOR({P},{P})",
        "CEILING.MATH({N},{P})", "FLOOR.MATH({N},{P})", "CEILING.MATH({N},{P},1)", "MROUND({P},{P})", "EVEN({N})", "ODD({N})", "GCD({I},{I})", "LCM({I},{I})", "FACT({I})", "COMBIN({I}+5,{I})",
        "COMBINA({I}+1,{I})", "PERMUT({I}+5,{I})", "MULTINOMIAL({I},{I})", "FACTDOUBLE({I})",
        "SIN({N})", "COS({N})", "ATAN({N})", "ATAN2({P},{N})", "ASIN({F})", "ACOS({F})", "SINH({F})", "COSH({F})", "TANH({N})", "ASINH({N})", "DEGREES({N})", "RADIANS({N})", "ATANH({F}/2)",
        "AVERAGE({R})", "AVERAGE({N},{R})", "AVERAGEA({R})", "MEDIAN({R})", "MEDIAN({N},{N},{N})", "MIN({R})", "MAX({R},{N})", "MIN({N},{N})", "MINA({R})", "MAXA({R})", "COUNT({R})", "COUNTA({X})", "COUNTBLANK({X})",
        "LARGE({R},{I})", "SMALL({R},{I})", "RANK(INDEX({R},{I}),{R})", "PERCENTILE({R},{F})", "QUARTILE({R},2)", "PERCENTILE.EXC({R},{F})", "QUARTILE.INC({R},1)", "MODE({I},{I},3,3,3)",
        "STDEV({R})", "STDEV.P({R})", "VAR({R})", "VARP({R})", "DEVSQ({R})", "AVEDEV({R})", "GEOMEAN({P},{P})", "HARMEAN({P},{P},{P})",
        "CORREL({R},{S})", "SLOPE({R},{S})", "INTERCEPT({R},{S})", "FORECAST({N},{R},{S})", "RSQ({R},{S})", "COVAR({R},{S})",
        "COUNTIF({X},{K})", "SUMIF({R},{K},{S})", "SUMIF({R},\">\"&{I})", "AVERAGEIF({R},{K},{S})", "COUNTIFS({R},{K},{S},{K})", "SUMIFS({R},{S},{K})", "MAXIFS({R},{S},{K})", "MINIFS({R},{S},{K})", "AVERAGEIFS({R},{S},{K})",
        "IF({L},{N},{N})", "IF({N}>{N},{N},{N})", "IFERROR({N}/0,{N})", "IFERROR({N},{N})", "IFNA({N},{N})", "IFS({L},{N},TRUE,{N})", "SWITCH({I},1,{N},2,{N},{N})", "CHOOSE({I}+1,{N},{N},{N},{N},{N},{N})",
        "VLOOKUP({C},A1:B8,2,FALSE)", "VLOOKUP({I},{{1,10;3,30;5,50}},2)", "HLOOKUP({I},{{1,2,4;10,20,40}},2)", "MATCH({C},{R},0)", "MATCH({I},{{0,2,4}})", "LOOKUP({I},{{0,2,4}},{{5,6,7}})", "INDEX({R},{I}+1)", "INDEX(A1:B8,{I}+1,2)",
        "SUM(INDEX(A1:B8,0,1))", "SUM(A1:INDEX(A1:A8,{I}+1))", "ROW({C})", "COLUMN({C})", "ROWS({R})", "COLUMNS(A1:B8)", "OFFSET(A1,{I},1)", "SUM(OFFSET(A1,1,0,{I}+1,2))", "INDIRECT(\"B\"&({I}+1))", "AREAS((A1,B2:B3))", "SUM(TRANSPOSE({{1,2;3,4}}))",
        "LEN({T})", "FIND(\"e\",{T}&\"e\")", "SEARCH(\"?E\",\"xe\"&{T})", "CODE(\"a\"&{T})", "UNICODE({T}&\"b\")", "VALUE(FIXED({N},2,TRUE))", "VALUE(TEXT({N},\"0.00\"))", "NUMBERVALUE(\"1.234,5\",\",\",\".\")", "N({C})",
        "DATE(2000+{I},{I}+7,{I}*9)", "YEAR({D})", "MONTH({D})", "DAY({D})", "WEEKDAY({D})", "WEEKDAY({D},2)", "WEEKNUM({D})", "ISOWEEKNUM({D})", "EDATE({D},{I})", "EOMONTH({D},-{I})", "DAYS({D},{D})", "DAYS360({D},{D})", "HOUR({F})", "MINUTE({F})", "SECOND({F})",
        "TIME({I},{I}*11,{I}*13)", "TIMEVALUE(\"2:24\")", "DATEVALUE(\"2024-02-29\")",
        "PMT({F}/12,{I}+3,{P})", "PV({F}/12,{I}+3,{P})", "FV({F}/12,{I}+3,{P})", "NPER({F}/12,-{P},100)", "NPV({F},{P},{P})", "SLN({P},{N},{I}+1)", "RATE({I}+6,-30,100)",
        "SUBTOTAL(9,{R})", "SUBTOTAL(4,{R},{S})", "SUBTOTAL(102,{X})", "SUBTOTAL(7,{S})", "AGGREGATE(9,6,{R})", "AGGREGATE(14,6,{R},{I}+1)", "AGGREGATE(12,5,{S})", "AGGREGATE(16,6,{S},{F})",
        "YEARFRAC({D},{D})", "YEARFRAC({D},{D},3)", "YEARFRAC({D},{D},4)", "DATEDIF(DATE(2000,1,31),{D},\"m\")", "DATEDIF(DATE(2000,3,15),{D},\"yd\")", "NETWORKDAYS({D},{D})", "WORKDAY({D},{I})", "NETWORKDAYS.INTL({D},{D},{I}+1)", "WORKDAY.INTL({D},{I},11)",
        "IPMT({F}/12,1+{I},{I}+12,{P})", "PPMT({F}/12,1+{I},{I}+12,{P},0,1)", "CUMIPMT(0.01,{I}+12,{P},2,5,0)", "CUMPRINC(0.01,{I}+12,{P},2,5,0)", "EFFECT({F}+0.01,4)", "NOMINAL({F}+0.01,12)", "RRI({I}+1,{P},{P})", "SYD({P}+500,{I},{I}+5,2)", "DDB({P}+500,{I},{I}+5,2)",
        "DB({P}+500,{I}+1,{I}+5,2,7)", "SKEW({R})", "KURT({S})", "STEYX({R},{S})", "STANDARDIZE({N},{N},{P})", "TRIMMEAN({R},0.25)", "SUMX2MY2({R},{S})", "SUMX2PY2({R},{S})", "SUMXMY2({R},{S})", "MDETERM({{1,4,3;2,5,7;3,1,1}})*{I}", "SUM(MMULT({{1,2;3,4}},{{3;2}}))",
        "BITAND({I},{I})", "BITOR({I},9)", "BITXOR({I},5)", "BITLSHIFT({I},{I})", "BIN2DEC(101)+{I}", "HEX2DEC(DEC2HEX({I}*77))", "DECIMAL(\"1F\",16)+{I}", "ARABIC(ROMAN({I}+40))", "SUM(FREQUENCY({R},{{1,5}}))", "SHEETS({C})", "FVSCHEDULE({P},{{0.1,0.2}})",
        "CONVERT({N},{U})", "ERROR.TYPE(1/0)", "TYPE({N})",
    ];

    /// <summary>Formulas entered as array formulas.</summary>
    public static readonly string[] Arrays =
    [
        "SUM({R}*{S})", "SUM(IF({R}>{N},{S},0))", "MAX(ABS({R}))", "AVERAGE(IF({R}<>{N},{R}))", "SUM(ROUND({S},0))", "SUM(({R}>2)*({S}<20))", "MIN({R}+{S})", "SUM(INT({S})-{R})", "SUM({R}*{{1,2}})",
        "INDEX({R}*{S},2)", "SUM(LEN(C1:C8))", "COUNT({R}/({S}>10))", "SUM(IFERROR({R}/({S}>10),0))", "SUM(MOD({R},3))", "MEDIAN(IF({S}>{N},{R},{N}))", "SUM(--({R}={N}))", "PRODUCT(1+{S}/1000)", "{R}*2", "{R}&C1", "SUM(ROW({R})*{R})",
        "SUM(TRANSPOSE({R})*TRANSPOSE({S}))", "SUM(-{R}%)", "SUM({R}^2)", "AND({R}>-9)", "TEXTJOIN(\",\",TRUE,{R}+1)", "MATCH(MAX({R}),{R},0)", "SUM(LARGE({R},{{1,2}}))",
    ];

    /// <summary>A range where one value is wanted: the cell beside the formula, if there is one.</summary>
    public static readonly string[] Intersections = ["{R}*2", "ABS({R})", "{R}+{S}", "IF({R}>3,{S},0)", "ROUND({S},0)", "SUM({R}*2)", "{R}&\"x\"", "-{R}", "{R}%", "LEN({S})", "{R}={S}"];

    public static readonly string[] Texts =
    [
        "{T}&{T}", "{T}&{I}", "LEFT({T},{I})", "RIGHT({T},{I})", "MID({T},2,{I})", "SUBSTITUTE({T},\"e\",\"3\")", "SUBSTITUTE({T},\"e\",\"i\",1)", "REPLACE({T},2,{I},\"x\")", "TRIM(\" \"&{T}&\"  z\")", "UPPER({T})", "LOWER({T})", "PROPER({T})",
        "REPT({T},{I})", "CONCATENATE({T},{I},{T})", "CONCAT({T},{I})", "TEXTJOIN(\"-\",TRUE,{T},{T})", "TEXT({N},{M})", "TEXT({D},\"yyyy-mm-dd\")", "TEXT({F},\"h:mm:ss\")", "FIXED({N},{I})", "IF({L},{T},{T})", "T({T})", "CHAR(65+{I})", "UNICHAR(8364)", "CLEAN({T})",
        "ADDRESS({I}+1,{I}+2)", "CHOOSE({I}+1,{T},{T},{T},{T},{T},{T})", "INDEX(C1:C8,{I}+1)", "ROUND({N},2)&{T}", "ROMAN({I}+40)", "BASE({I}+20,2)", "DEC2BIN({I}+5)", "DEC2HEX(-{I})", "TEXT({P},\"# ?/?\")",
    ];

    public static readonly string[] Logicals =
    [
        "{N}>{N}", "{N}>={N}", "{N}<{N}", "{N}<={N}", "{N}={N}", "{N}<>{N}", "{T}={T}", "{T}<{T}", "NOT({L})", "AND({L},{L})", "OR({L},{L})", "XOR({L},{L})", "EXACT({T},{T})", "ISNUMBER({N})", "ISTEXT({T})", "ISBLANK({C})", "ISERROR({N}/0)", "ISNA(NA())",
        "ISERR({N})", "ISLOGICAL({L})", "ISNONTEXT({N})", "ISEVEN({I})", "ISODD({N})", "ISREF({C})", "TRUE", "FALSE", "TRUE()", "FALSE()",
    ];
}
