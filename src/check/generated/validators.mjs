/* Generated from schemas/*.schema.json by `npm run generate`. */
import trialSchema from '../../../schemas/trial.schema.json' with { type: 'json' };
import siteSchema from '../../../schemas/site.schema.json' with { type: 'json' };
import cultivarsSchema from '../../../schemas/cultivars.schema.json' with { type: 'json' };
import sheetSchema from '../../../schemas/sheet.schema.json' with { type: 'json' };
import * as formats from '../formats.ts';
export const trial = validate52;
const schema19 = trialSchema;
const func1 = Object.prototype.hasOwnProperty;
const func2 = formats.lengthOf;
const pattern3 = new RegExp("^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$", "u");
const pattern4 = new RegExp("^NCBITaxon:[1-9][0-9]*$", "u");
const pattern5 = new RegExp("^[A-Z]{2}$", "u");
const pattern6 = new RegExp("^(https://orcid\\.org/)?[0-9]{4}-[0-9]{4}-[0-9]{4}-[0-9]{3}[0-9X]$", "u");
const pattern8 = new RegExp("^[^\\s,;\"](.*[^\\s,;\"])?$", "u");
const pattern9 = new RegExp("^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$", "u");
const pattern10 = new RegExp("^-?[0-9]{1,3}$", "u");
const pattern11 = new RegExp("^TO:[0-9]{7}$", "u");
const schema20 = trialSchema.$defs.date;
const formats0 = formats.date;

function validate53(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate53.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data === "string"){
if(!(formats0(data))){
const err0 = {instancePath,schemaPath:"#/format",keyword:"format",params:{format: "date"},message:"must match format \""+"date"+"\""};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate53.errors = vErrors;
return errors === 0;
}
validate53.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema21 = trialSchema.$defs.columnId;
const pattern7 = new RegExp("^[A-Za-z][A-Za-z0-9_]{0,39}$", "u");

function validate58(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate58.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data === "string"){
if(!pattern7.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z][A-Za-z0-9_]{0,39}$"},message:"must match pattern \""+"^[A-Za-z][A-Za-z0-9_]{0,39}$"+"\""};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate58.errors = vErrors;
return errors === 0;
}
validate58.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema22 = trialSchema.$defs.rectangle;

function validate60(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate60.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.length === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "length"},message:"must have required property '"+"length"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.width === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "width"},message:"must have required property '"+"width"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.unit === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "unit"},message:"must have required property '"+"unit"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "length") || (key0 === "width")) || (key0 === "unit"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.length !== undefined){
let data0 = data.length;
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 <= 0 || isNaN(data0)){
const err4 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.width !== undefined){
let data1 = data.width;
if((typeof data1 == "number") && (isFinite(data1))){
if(data1 <= 0 || isNaN(data1)){
const err6 = {instancePath:instancePath+"/width",schemaPath:"#/properties/width/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/width",schemaPath:"#/properties/width/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.unit !== undefined){
let data2 = data.unit;
if(!(((((data2 === "mm") || (data2 === "cm")) || (data2 === "m")) || (data2 === "in")) || (data2 === "ft"))){
const err8 = {instancePath:instancePath+"/unit",schemaPath:"#/properties/unit/enum",keyword:"enum",params:{allowedValues: schema22.properties.unit.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate60.errors = vErrors;
return errors === 0;
}
validate60.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema23 = trialSchema.$defs.massUnit;

function validate63(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate63.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(((((((data === "g") || (data === "kg")) || (data === "mg")) || (data === "oz")) || (data === "lb")) || (data === "[oz_av]")) || (data === "[lb_av]"))){
const err0 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema23.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate63.errors = vErrors;
return errors === 0;
}
validate63.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate52(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate52.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
const _errs2 = errors;
let valid1 = true;
const _errs3 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.status === undefined) && (missing0 = "status")){
const err0 = {};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
else {
if(data.status !== undefined){
if("finished" !== data.status){
const err1 = {};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
}
}
var _valid0 = _errs3 === errors;
errors = _errs2;
if(vErrors !== null){
if(_errs2){
vErrors.length = _errs2;
}
else {
vErrors = null;
}
}
if(_valid0){
const _errs5 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.dates === undefined){
const err2 = {instancePath,schemaPath:"#/allOf/0/then/required",keyword:"required",params:{missingProperty: "dates"},message:"must have required property '"+"dates"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.releases === undefined){
const err3 = {instancePath,schemaPath:"#/allOf/0/then/required",keyword:"required",params:{missingProperty: "releases"},message:"must have required property '"+"releases"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(data.dates !== undefined){
let data1 = data.dates;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.cuts === undefined){
const err4 = {instancePath:instancePath+"/dates",schemaPath:"#/allOf/0/then/properties/dates/required",keyword:"required",params:{missingProperty: "cuts"},message:"must have required property '"+"cuts"+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
var _valid0 = _errs5 === errors;
valid1 = _valid0;
if(valid1){
var props0 = {};
props0.dates = true;
props0.status = true;
}
}
if(!valid1){
const err5 = {instancePath,schemaPath:"#/allOf/0/if",keyword:"if",params:{failingKeyword: "then"},message:"must match \"then\" schema"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.title === undefined){
const err6 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(data.version === undefined){
const err7 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "version"},message:"must have required property '"+"version"+"'"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(data.status === undefined){
const err8 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"},message:"must have required property '"+"status"+"'"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(data.question === undefined){
const err9 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "question"},message:"must have required property '"+"question"+"'"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
if(data.crop === undefined){
const err10 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "crop"},message:"must have required property '"+"crop"+"'"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
if(data.season === undefined){
const err11 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "season"},message:"must have required property '"+"season"+"'"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(data.site === undefined){
const err12 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "site"},message:"must have required property '"+"site"+"'"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(data.people === undefined){
const err13 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "people"},message:"must have required property '"+"people"+"'"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
if(data.licence === undefined){
const err14 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "licence"},message:"must have required property '"+"licence"+"'"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(data.design === undefined){
const err15 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "design"},message:"must have required property '"+"design"+"'"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
if(data.containers === undefined){
const err16 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "containers"},message:"must have required property '"+"containers"+"'"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
if(data.variables === undefined){
const err17 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "variables"},message:"must have required property '"+"variables"+"'"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema19.properties, key0))){
const err18 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data.title !== undefined){
let data2 = data.title;
if(typeof data2 === "string"){
if(func2(data2) > 200){
const err19 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
if(func2(data2) < 3){
const err20 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/minLength",keyword:"minLength",params:{limit: 3},message:"must NOT have fewer than 3 characters"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.version !== undefined){
let data3 = data.version;
if(typeof data3 === "string"){
if(!pattern3.test(data3)){
const err22 = {instancePath:instancePath+"/version",schemaPath:"#/properties/version/pattern",keyword:"pattern",params:{pattern: "^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"},message:"must match pattern \""+"^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"+"\""};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
else {
const err23 = {instancePath:instancePath+"/version",schemaPath:"#/properties/version/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.status !== undefined){
let data4 = data.status;
if(!(((data4 === "planned") || (data4 === "growing")) || (data4 === "finished"))){
const err24 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema19.properties.status.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data.question !== undefined){
let data5 = data.question;
if(typeof data5 === "string"){
if(func2(data5) > 500){
const err25 = {instancePath:instancePath+"/question",schemaPath:"#/properties/question/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
if(func2(data5) < 10){
const err26 = {instancePath:instancePath+"/question",schemaPath:"#/properties/question/minLength",keyword:"minLength",params:{limit: 10},message:"must NOT have fewer than 10 characters"};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
else {
const err27 = {instancePath:instancePath+"/question",schemaPath:"#/properties/question/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.summary !== undefined){
let data6 = data.summary;
if(typeof data6 === "string"){
if(func2(data6) > 5000){
const err28 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/maxLength",keyword:"maxLength",params:{limit: 5000},message:"must NOT have more than 5000 characters"};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
if(func2(data6) < 50){
const err29 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/minLength",keyword:"minLength",params:{limit: 50},message:"must NOT have fewer than 50 characters"};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
else {
const err30 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data.crop !== undefined){
let data7 = data.crop;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.name === undefined){
const err31 = {instancePath:instancePath+"/crop",schemaPath:"#/properties/crop/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
for(const key1 in data7){
if(!((((key1 === "name") || (key1 === "species")) || (key1 === "taxon")) || (key1 === "cultivar"))){
const err32 = {instancePath:instancePath+"/crop",schemaPath:"#/properties/crop/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data7.name !== undefined){
let data8 = data7.name;
if(typeof data8 === "string"){
if(func2(data8) > 100){
const err33 = {instancePath:instancePath+"/crop/name",schemaPath:"#/properties/crop/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
if(func2(data8) < 2){
const err34 = {instancePath:instancePath+"/crop/name",schemaPath:"#/properties/crop/properties/name/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
else {
const err35 = {instancePath:instancePath+"/crop/name",schemaPath:"#/properties/crop/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data7.species !== undefined){
let data9 = data7.species;
if(typeof data9 === "string"){
if(func2(data9) > 100){
const err36 = {instancePath:instancePath+"/crop/species",schemaPath:"#/properties/crop/properties/species/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
if(func2(data9) < 3){
const err37 = {instancePath:instancePath+"/crop/species",schemaPath:"#/properties/crop/properties/species/minLength",keyword:"minLength",params:{limit: 3},message:"must NOT have fewer than 3 characters"};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
else {
const err38 = {instancePath:instancePath+"/crop/species",schemaPath:"#/properties/crop/properties/species/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data7.taxon !== undefined){
let data10 = data7.taxon;
if(typeof data10 === "string"){
if(!pattern4.test(data10)){
const err39 = {instancePath:instancePath+"/crop/taxon",schemaPath:"#/properties/crop/properties/taxon/pattern",keyword:"pattern",params:{pattern: "^NCBITaxon:[1-9][0-9]*$"},message:"must match pattern \""+"^NCBITaxon:[1-9][0-9]*$"+"\""};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
else {
const err40 = {instancePath:instancePath+"/crop/taxon",schemaPath:"#/properties/crop/properties/taxon/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
if(data7.cultivar !== undefined){
let data11 = data7.cultivar;
if(typeof data11 === "string"){
if(func2(data11) > 100){
const err41 = {instancePath:instancePath+"/crop/cultivar",schemaPath:"#/properties/crop/properties/cultivar/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
if(func2(data11) < 1){
const err42 = {instancePath:instancePath+"/crop/cultivar",schemaPath:"#/properties/crop/properties/cultivar/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
else {
const err43 = {instancePath:instancePath+"/crop/cultivar",schemaPath:"#/properties/crop/properties/cultivar/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
}
else {
const err44 = {instancePath:instancePath+"/crop",schemaPath:"#/properties/crop/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
}
if(data.season !== undefined){
let data12 = data.season;
if(data12 && typeof data12 == "object" && !Array.isArray(data12)){
if(data12.year === undefined){
const err45 = {instancePath:instancePath+"/season",schemaPath:"#/properties/season/required",keyword:"required",params:{missingProperty: "year"},message:"must have required property '"+"year"+"'"};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
if(data12.name === undefined){
const err46 = {instancePath:instancePath+"/season",schemaPath:"#/properties/season/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
for(const key2 in data12){
if(!((key2 === "year") || (key2 === "name"))){
const err47 = {instancePath:instancePath+"/season",schemaPath:"#/properties/season/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key2},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
if(data12.year !== undefined){
let data13 = data12.year;
if(!(((typeof data13 == "number") && (!(data13 % 1) && !isNaN(data13))) && (isFinite(data13)))){
const err48 = {instancePath:instancePath+"/season/year",schemaPath:"#/properties/season/properties/year/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
if((typeof data13 == "number") && (isFinite(data13))){
if(data13 > 2200 || isNaN(data13)){
const err49 = {instancePath:instancePath+"/season/year",schemaPath:"#/properties/season/properties/year/maximum",keyword:"maximum",params:{comparison: "<=", limit: 2200},message:"must be <= 2200"};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
if(data13 < 1800 || isNaN(data13)){
const err50 = {instancePath:instancePath+"/season/year",schemaPath:"#/properties/season/properties/year/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1800},message:"must be >= 1800"};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
}
}
if(data12.name !== undefined){
let data14 = data12.name;
if(typeof data14 === "string"){
if(func2(data14) > 60){
const err51 = {instancePath:instancePath+"/season/name",schemaPath:"#/properties/season/properties/name/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
if(func2(data14) < 2){
const err52 = {instancePath:instancePath+"/season/name",schemaPath:"#/properties/season/properties/name/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
}
else {
const err53 = {instancePath:instancePath+"/season/name",schemaPath:"#/properties/season/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err53];
}
else {
vErrors.push(err53);
}
errors++;
}
}
}
else {
const err54 = {instancePath:instancePath+"/season",schemaPath:"#/properties/season/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err54];
}
else {
vErrors.push(err54);
}
errors++;
}
}
if(data.dates !== undefined){
let data15 = data.dates;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
for(const key3 in data15){
if(!((((key3 === "sown") || (key3 === "germinated")) || (key3 === "transplanted")) || (key3 === "cuts"))){
const err55 = {instancePath:instancePath+"/dates",schemaPath:"#/properties/dates/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key3},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err55];
}
else {
vErrors.push(err55);
}
errors++;
}
}
if(data15.sown !== undefined){
if(!(validate53(data15.sown, {instancePath:instancePath+"/dates/sown",parentData:data15,parentDataProperty:"sown",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data15.germinated !== undefined){
if(!(validate53(data15.germinated, {instancePath:instancePath+"/dates/germinated",parentData:data15,parentDataProperty:"germinated",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data15.transplanted !== undefined){
if(!(validate53(data15.transplanted, {instancePath:instancePath+"/dates/transplanted",parentData:data15,parentDataProperty:"transplanted",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data15.cuts !== undefined){
let data19 = data15.cuts;
if(Array.isArray(data19)){
if(data19.length > 60){
const err56 = {instancePath:instancePath+"/dates/cuts",schemaPath:"#/properties/dates/properties/cuts/maxItems",keyword:"maxItems",params:{limit: 60},message:"must NOT have more than 60 items"};
if(vErrors === null){
vErrors = [err56];
}
else {
vErrors.push(err56);
}
errors++;
}
if(data19.length < 1){
const err57 = {instancePath:instancePath+"/dates/cuts",schemaPath:"#/properties/dates/properties/cuts/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err57];
}
else {
vErrors.push(err57);
}
errors++;
}
const len0 = data19.length;
for(let i0=0; i0<len0; i0++){
if(!(validate53(data19[i0], {instancePath:instancePath+"/dates/cuts/" + i0,parentData:data19,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
}
else {
const err58 = {instancePath:instancePath+"/dates/cuts",schemaPath:"#/properties/dates/properties/cuts/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err58];
}
else {
vErrors.push(err58);
}
errors++;
}
}
}
else {
const err59 = {instancePath:instancePath+"/dates",schemaPath:"#/properties/dates/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err59];
}
else {
vErrors.push(err59);
}
errors++;
}
}
if(data.site !== undefined){
let data21 = data.site;
if(data21 && typeof data21 == "object" && !Array.isArray(data21)){
if(data21.name === undefined){
const err60 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err60];
}
else {
vErrors.push(err60);
}
errors++;
}
if(data21.setting === undefined){
const err61 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/required",keyword:"required",params:{missingProperty: "setting"},message:"must have required property '"+"setting"+"'"};
if(vErrors === null){
vErrors = [err61];
}
else {
vErrors.push(err61);
}
errors++;
}
for(const key4 in data21){
if(!(((((((key4 === "name") || (key4 === "country")) || (key4 === "region")) || (key4 === "latitude")) || (key4 === "longitude")) || (key4 === "elevation_m")) || (key4 === "setting"))){
const err62 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key4},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err62];
}
else {
vErrors.push(err62);
}
errors++;
}
}
if(data21.name !== undefined){
let data22 = data21.name;
if(typeof data22 === "string"){
if(func2(data22) > 100){
const err63 = {instancePath:instancePath+"/site/name",schemaPath:"#/properties/site/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err63];
}
else {
vErrors.push(err63);
}
errors++;
}
if(func2(data22) < 2){
const err64 = {instancePath:instancePath+"/site/name",schemaPath:"#/properties/site/properties/name/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err64];
}
else {
vErrors.push(err64);
}
errors++;
}
}
else {
const err65 = {instancePath:instancePath+"/site/name",schemaPath:"#/properties/site/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err65];
}
else {
vErrors.push(err65);
}
errors++;
}
}
if(data21.country !== undefined){
let data23 = data21.country;
if(typeof data23 === "string"){
if(!pattern5.test(data23)){
const err66 = {instancePath:instancePath+"/site/country",schemaPath:"#/properties/site/properties/country/pattern",keyword:"pattern",params:{pattern: "^[A-Z]{2}$"},message:"must match pattern \""+"^[A-Z]{2}$"+"\""};
if(vErrors === null){
vErrors = [err66];
}
else {
vErrors.push(err66);
}
errors++;
}
}
else {
const err67 = {instancePath:instancePath+"/site/country",schemaPath:"#/properties/site/properties/country/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err67];
}
else {
vErrors.push(err67);
}
errors++;
}
}
if(data21.region !== undefined){
let data24 = data21.region;
if(typeof data24 === "string"){
if(func2(data24) > 100){
const err68 = {instancePath:instancePath+"/site/region",schemaPath:"#/properties/site/properties/region/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err68];
}
else {
vErrors.push(err68);
}
errors++;
}
if(func2(data24) < 2){
const err69 = {instancePath:instancePath+"/site/region",schemaPath:"#/properties/site/properties/region/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err69];
}
else {
vErrors.push(err69);
}
errors++;
}
}
else {
const err70 = {instancePath:instancePath+"/site/region",schemaPath:"#/properties/site/properties/region/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err70];
}
else {
vErrors.push(err70);
}
errors++;
}
}
if(data21.latitude !== undefined){
let data25 = data21.latitude;
if((typeof data25 == "number") && (isFinite(data25))){
if(data25 > 90 || isNaN(data25)){
const err71 = {instancePath:instancePath+"/site/latitude",schemaPath:"#/properties/site/properties/latitude/maximum",keyword:"maximum",params:{comparison: "<=", limit: 90},message:"must be <= 90"};
if(vErrors === null){
vErrors = [err71];
}
else {
vErrors.push(err71);
}
errors++;
}
if(data25 < -90 || isNaN(data25)){
const err72 = {instancePath:instancePath+"/site/latitude",schemaPath:"#/properties/site/properties/latitude/minimum",keyword:"minimum",params:{comparison: ">=", limit: -90},message:"must be >= -90"};
if(vErrors === null){
vErrors = [err72];
}
else {
vErrors.push(err72);
}
errors++;
}
}
else {
const err73 = {instancePath:instancePath+"/site/latitude",schemaPath:"#/properties/site/properties/latitude/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err73];
}
else {
vErrors.push(err73);
}
errors++;
}
}
if(data21.longitude !== undefined){
let data26 = data21.longitude;
if((typeof data26 == "number") && (isFinite(data26))){
if(data26 > 180 || isNaN(data26)){
const err74 = {instancePath:instancePath+"/site/longitude",schemaPath:"#/properties/site/properties/longitude/maximum",keyword:"maximum",params:{comparison: "<=", limit: 180},message:"must be <= 180"};
if(vErrors === null){
vErrors = [err74];
}
else {
vErrors.push(err74);
}
errors++;
}
if(data26 < -180 || isNaN(data26)){
const err75 = {instancePath:instancePath+"/site/longitude",schemaPath:"#/properties/site/properties/longitude/minimum",keyword:"minimum",params:{comparison: ">=", limit: -180},message:"must be >= -180"};
if(vErrors === null){
vErrors = [err75];
}
else {
vErrors.push(err75);
}
errors++;
}
}
else {
const err76 = {instancePath:instancePath+"/site/longitude",schemaPath:"#/properties/site/properties/longitude/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err76];
}
else {
vErrors.push(err76);
}
errors++;
}
}
if(data21.elevation_m !== undefined){
let data27 = data21.elevation_m;
if((typeof data27 == "number") && (isFinite(data27))){
if(data27 > 9000 || isNaN(data27)){
const err77 = {instancePath:instancePath+"/site/elevation_m",schemaPath:"#/properties/site/properties/elevation_m/maximum",keyword:"maximum",params:{comparison: "<=", limit: 9000},message:"must be <= 9000"};
if(vErrors === null){
vErrors = [err77];
}
else {
vErrors.push(err77);
}
errors++;
}
if(data27 < -500 || isNaN(data27)){
const err78 = {instancePath:instancePath+"/site/elevation_m",schemaPath:"#/properties/site/properties/elevation_m/minimum",keyword:"minimum",params:{comparison: ">=", limit: -500},message:"must be >= -500"};
if(vErrors === null){
vErrors = [err78];
}
else {
vErrors.push(err78);
}
errors++;
}
}
else {
const err79 = {instancePath:instancePath+"/site/elevation_m",schemaPath:"#/properties/site/properties/elevation_m/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err79];
}
else {
vErrors.push(err79);
}
errors++;
}
}
if(data21.setting !== undefined){
let data28 = data21.setting;
if(!(((((data28 === "open air") || (data28 === "rain shelter")) || (data28 === "shade house")) || (data28 === "greenhouse")) || (data28 === "indoors"))){
const err80 = {instancePath:instancePath+"/site/setting",schemaPath:"#/properties/site/properties/setting/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.setting.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err80];
}
else {
vErrors.push(err80);
}
errors++;
}
}
}
else {
const err81 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err81];
}
else {
vErrors.push(err81);
}
errors++;
}
}
if(data.people !== undefined){
let data29 = data.people;
if(Array.isArray(data29)){
if(data29.length < 1){
const err82 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err82];
}
else {
vErrors.push(err82);
}
errors++;
}
const len1 = data29.length;
for(let i1=0; i1<len1; i1++){
let data30 = data29[i1];
if(data30 && typeof data30 == "object" && !Array.isArray(data30)){
if(data30.name === undefined){
const err83 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err83];
}
else {
vErrors.push(err83);
}
errors++;
}
if(data30.part === undefined){
const err84 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/required",keyword:"required",params:{missingProperty: "part"},message:"must have required property '"+"part"+"'"};
if(vErrors === null){
vErrors = [err84];
}
else {
vErrors.push(err84);
}
errors++;
}
for(const key5 in data30){
if(!(((key5 === "name") || (key5 === "part")) || (key5 === "orcid"))){
const err85 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key5},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err85];
}
else {
vErrors.push(err85);
}
errors++;
}
}
if(data30.name !== undefined){
let data31 = data30.name;
if(typeof data31 === "string"){
if(func2(data31) > 200){
const err86 = {instancePath:instancePath+"/people/" + i1+"/name",schemaPath:"#/properties/people/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err86];
}
else {
vErrors.push(err86);
}
errors++;
}
if(func2(data31) < 2){
const err87 = {instancePath:instancePath+"/people/" + i1+"/name",schemaPath:"#/properties/people/items/properties/name/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err87];
}
else {
vErrors.push(err87);
}
errors++;
}
}
else {
const err88 = {instancePath:instancePath+"/people/" + i1+"/name",schemaPath:"#/properties/people/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err88];
}
else {
vErrors.push(err88);
}
errors++;
}
}
if(data30.part !== undefined){
let data32 = data30.part;
if(!((((data32 === "grower") || (data32 === "recorder")) || (data32 === "author")) || (data32 === "contact"))){
const err89 = {instancePath:instancePath+"/people/" + i1+"/part",schemaPath:"#/properties/people/items/properties/part/enum",keyword:"enum",params:{allowedValues: schema19.properties.people.items.properties.part.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err89];
}
else {
vErrors.push(err89);
}
errors++;
}
}
if(data30.orcid !== undefined){
let data33 = data30.orcid;
if(typeof data33 === "string"){
if(!pattern6.test(data33)){
const err90 = {instancePath:instancePath+"/people/" + i1+"/orcid",schemaPath:"#/properties/people/items/properties/orcid/pattern",keyword:"pattern",params:{pattern: "^(https://orcid\\.org/)?[0-9]{4}-[0-9]{4}-[0-9]{4}-[0-9]{3}[0-9X]$"},message:"must match pattern \""+"^(https://orcid\\.org/)?[0-9]{4}-[0-9]{4}-[0-9]{4}-[0-9]{3}[0-9X]$"+"\""};
if(vErrors === null){
vErrors = [err90];
}
else {
vErrors.push(err90);
}
errors++;
}
}
else {
const err91 = {instancePath:instancePath+"/people/" + i1+"/orcid",schemaPath:"#/properties/people/items/properties/orcid/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err91];
}
else {
vErrors.push(err91);
}
errors++;
}
}
}
else {
const err92 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err92];
}
else {
vErrors.push(err92);
}
errors++;
}
}
}
else {
const err93 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err93];
}
else {
vErrors.push(err93);
}
errors++;
}
}
if(data.licence !== undefined){
let data34 = data.licence;
if(typeof data34 === "string"){
if(func2(data34) > 60){
const err94 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err94];
}
else {
vErrors.push(err94);
}
errors++;
}
if(func2(data34) < 2){
const err95 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err95];
}
else {
vErrors.push(err95);
}
errors++;
}
}
else {
const err96 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err96];
}
else {
vErrors.push(err96);
}
errors++;
}
}
if(data.factors !== undefined){
let data35 = data.factors;
if(Array.isArray(data35)){
if(data35.length < 1){
const err97 = {instancePath:instancePath+"/factors",schemaPath:"#/properties/factors/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err97];
}
else {
vErrors.push(err97);
}
errors++;
}
const len2 = data35.length;
for(let i2=0; i2<len2; i2++){
let data36 = data35[i2];
if(data36 && typeof data36 == "object" && !Array.isArray(data36)){
if(data36.id === undefined){
const err98 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err98];
}
else {
vErrors.push(err98);
}
errors++;
}
if(data36.name === undefined){
const err99 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err99];
}
else {
vErrors.push(err99);
}
errors++;
}
if(data36.levels === undefined){
const err100 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "levels"},message:"must have required property '"+"levels"+"'"};
if(vErrors === null){
vErrors = [err100];
}
else {
vErrors.push(err100);
}
errors++;
}
for(const key6 in data36){
if(!(((((key6 === "id") || (key6 === "name")) || (key6 === "kind")) || (key6 === "levels")) || (key6 === "check"))){
const err101 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key6},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err101];
}
else {
vErrors.push(err101);
}
errors++;
}
}
if(data36.id !== undefined){
if(!(validate58(data36.id, {instancePath:instancePath+"/factors/" + i2+"/id",parentData:data36,parentDataProperty:"id",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
errors = vErrors.length;
}
}
if(data36.name !== undefined){
let data38 = data36.name;
if(typeof data38 === "string"){
if(func2(data38) > 100){
const err102 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err102];
}
else {
vErrors.push(err102);
}
errors++;
}
if(func2(data38) < 1){
const err103 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err103];
}
else {
vErrors.push(err103);
}
errors++;
}
}
else {
const err104 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err104];
}
else {
vErrors.push(err104);
}
errors++;
}
}
if(data36.kind !== undefined){
if("cultivar" !== data36.kind){
const err105 = {instancePath:instancePath+"/factors/" + i2+"/kind",schemaPath:"#/properties/factors/items/properties/kind/const",keyword:"const",params:{allowedValue: "cultivar"},message:"must be equal to constant"};
if(vErrors === null){
vErrors = [err105];
}
else {
vErrors.push(err105);
}
errors++;
}
}
if(data36.levels !== undefined){
let data40 = data36.levels;
if(Array.isArray(data40)){
if(data40.length < 1){
const err106 = {instancePath:instancePath+"/factors/" + i2+"/levels",schemaPath:"#/properties/factors/items/properties/levels/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err106];
}
else {
vErrors.push(err106);
}
errors++;
}
const len3 = data40.length;
for(let i3=0; i3<len3; i3++){
let data41 = data40[i3];
if(data41 && typeof data41 == "object" && !Array.isArray(data41)){
if(data41.id === undefined){
const err107 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err107];
}
else {
vErrors.push(err107);
}
errors++;
}
for(const key7 in data41){
if(!(((key7 === "id") || (key7 === "name")) || (key7 === "note"))){
const err108 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key7},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err108];
}
else {
vErrors.push(err108);
}
errors++;
}
}
if(data41.id !== undefined){
let data42 = data41.id;
if(typeof data42 === "string"){
if(func2(data42) > 64){
const err109 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/maxLength",keyword:"maxLength",params:{limit: 64},message:"must NOT have more than 64 characters"};
if(vErrors === null){
vErrors = [err109];
}
else {
vErrors.push(err109);
}
errors++;
}
if(func2(data42) < 1){
const err110 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err110];
}
else {
vErrors.push(err110);
}
errors++;
}
if(!pattern8.test(data42)){
const err111 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/pattern",keyword:"pattern",params:{pattern: "^[^\\s,;\"](.*[^\\s,;\"])?$"},message:"must match pattern \""+"^[^\\s,;\"](.*[^\\s,;\"])?$"+"\""};
if(vErrors === null){
vErrors = [err111];
}
else {
vErrors.push(err111);
}
errors++;
}
}
else {
const err112 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err112];
}
else {
vErrors.push(err112);
}
errors++;
}
}
if(data41.name !== undefined){
let data43 = data41.name;
if(typeof data43 === "string"){
if(func2(data43) > 100){
const err113 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err113];
}
else {
vErrors.push(err113);
}
errors++;
}
if(func2(data43) < 1){
const err114 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err114];
}
else {
vErrors.push(err114);
}
errors++;
}
}
else {
const err115 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err115];
}
else {
vErrors.push(err115);
}
errors++;
}
}
if(data41.note !== undefined){
let data44 = data41.note;
if(typeof data44 === "string"){
if(func2(data44) > 1000){
const err116 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err116];
}
else {
vErrors.push(err116);
}
errors++;
}
if(func2(data44) < 1){
const err117 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err117];
}
else {
vErrors.push(err117);
}
errors++;
}
}
else {
const err118 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err118];
}
else {
vErrors.push(err118);
}
errors++;
}
}
}
else {
const err119 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err119];
}
else {
vErrors.push(err119);
}
errors++;
}
}
}
else {
const err120 = {instancePath:instancePath+"/factors/" + i2+"/levels",schemaPath:"#/properties/factors/items/properties/levels/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err120];
}
else {
vErrors.push(err120);
}
errors++;
}
}
if(data36.check !== undefined){
let data45 = data36.check;
if(typeof data45 === "string"){
if(func2(data45) < 1){
const err121 = {instancePath:instancePath+"/factors/" + i2+"/check",schemaPath:"#/properties/factors/items/properties/check/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err121];
}
else {
vErrors.push(err121);
}
errors++;
}
}
else {
const err122 = {instancePath:instancePath+"/factors/" + i2+"/check",schemaPath:"#/properties/factors/items/properties/check/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err122];
}
else {
vErrors.push(err122);
}
errors++;
}
}
}
else {
const err123 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err123];
}
else {
vErrors.push(err123);
}
errors++;
}
}
}
else {
const err124 = {instancePath:instancePath+"/factors",schemaPath:"#/properties/factors/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err124];
}
else {
vErrors.push(err124);
}
errors++;
}
}
if(data.design !== undefined){
let data46 = data.design;
if(data46 && typeof data46 == "object" && !Array.isArray(data46)){
if(data46.arrangement === undefined){
const err125 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "arrangement"},message:"must have required property '"+"arrangement"+"'"};
if(vErrors === null){
vErrors = [err125];
}
else {
vErrors.push(err125);
}
errors++;
}
if(data46.allotted === undefined){
const err126 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "allotted"},message:"must have required property '"+"allotted"+"'"};
if(vErrors === null){
vErrors = [err126];
}
else {
vErrors.push(err126);
}
errors++;
}
if(data46.randomised === undefined){
const err127 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "randomised"},message:"must have required property '"+"randomised"+"'"};
if(vErrors === null){
vErrors = [err127];
}
else {
vErrors.push(err127);
}
errors++;
}
for(const key8 in data46){
if(!(((((key8 === "arrangement") || (key8 === "allotted")) || (key8 === "randomised")) || (key8 === "seed")) || (key8 === "lot"))){
const err128 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key8},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err128];
}
else {
vErrors.push(err128);
}
errors++;
}
}
if(data46.arrangement !== undefined){
let data47 = data46.arrangement;
if(!(((((data47 === "unreplicated") || (data47 === "completely randomised")) || (data47 === "randomised blocks")) || (data47 === "latin square")) || (data47 === "split plot"))){
const err129 = {instancePath:instancePath+"/design/arrangement",schemaPath:"#/properties/design/properties/arrangement/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.arrangement.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err129];
}
else {
vErrors.push(err129);
}
errors++;
}
}
if(data46.allotted !== undefined){
let data48 = data46.allotted;
if(!(((data48 === "container") || (data48 === "plot")) || (data48 === "position"))){
const err130 = {instancePath:instancePath+"/design/allotted",schemaPath:"#/properties/design/properties/allotted/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.allotted.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err130];
}
else {
vErrors.push(err130);
}
errors++;
}
}
if(data46.randomised !== undefined){
if(typeof data46.randomised !== "boolean"){
const err131 = {instancePath:instancePath+"/design/randomised",schemaPath:"#/properties/design/properties/randomised/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err131];
}
else {
vErrors.push(err131);
}
errors++;
}
}
if(data46.seed !== undefined){
let data50 = data46.seed;
if(!(((typeof data50 == "number") && (!(data50 % 1) && !isNaN(data50))) && (isFinite(data50)))){
const err132 = {instancePath:instancePath+"/design/seed",schemaPath:"#/properties/design/properties/seed/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err132];
}
else {
vErrors.push(err132);
}
errors++;
}
if((typeof data50 == "number") && (isFinite(data50))){
if(data50 < 0 || isNaN(data50)){
const err133 = {instancePath:instancePath+"/design/seed",schemaPath:"#/properties/design/properties/seed/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err133];
}
else {
vErrors.push(err133);
}
errors++;
}
}
}
if(data46.lot !== undefined){
let data51 = data46.lot;
if(data51 && typeof data51 == "object" && !Array.isArray(data51)){
if(data51.method === undefined){
const err134 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/required",keyword:"required",params:{missingProperty: "method"},message:"must have required property '"+"method"+"'"};
if(vErrors === null){
vErrors = [err134];
}
else {
vErrors.push(err134);
}
errors++;
}
for(const key9 in data51){
if(!(key9 === "method")){
const err135 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key9},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err135];
}
else {
vErrors.push(err135);
}
errors++;
}
}
if(data51.method !== undefined){
if(!(data51.method === "lots-1")){
const err136 = {instancePath:instancePath+"/design/lot/method",schemaPath:"#/properties/design/properties/lot/properties/method/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.lot.properties.method.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err136];
}
else {
vErrors.push(err136);
}
errors++;
}
}
}
else {
const err137 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err137];
}
else {
vErrors.push(err137);
}
errors++;
}
}
}
else {
const err138 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err138];
}
else {
vErrors.push(err138);
}
errors++;
}
}
if(data.containers !== undefined){
let data53 = data.containers;
if(Array.isArray(data53)){
if(data53.length < 1){
const err139 = {instancePath:instancePath+"/containers",schemaPath:"#/properties/containers/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err139];
}
else {
vErrors.push(err139);
}
errors++;
}
const len4 = data53.length;
for(let i4=0; i4<len4; i4++){
let data54 = data53[i4];
if(data54 && typeof data54 == "object" && !Array.isArray(data54)){
if(data54.id === undefined){
const err140 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err140];
}
else {
vErrors.push(err140);
}
errors++;
}
if(data54.kind === undefined){
const err141 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err141];
}
else {
vErrors.push(err141);
}
errors++;
}
if(data54.rows === undefined){
const err142 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "rows"},message:"must have required property '"+"rows"+"'"};
if(vErrors === null){
vErrors = [err142];
}
else {
vErrors.push(err142);
}
errors++;
}
if(data54.columns === undefined){
const err143 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "columns"},message:"must have required property '"+"columns"+"'"};
if(vErrors === null){
vErrors = [err143];
}
else {
vErrors.push(err143);
}
errors++;
}
for(const key10 in data54){
if(!(func1.call(schema19.properties.containers.items.properties, key10))){
const err144 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key10},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err144];
}
else {
vErrors.push(err144);
}
errors++;
}
}
if(data54.id !== undefined){
let data55 = data54.id;
if(typeof data55 === "string"){
if(!pattern9.test(data55)){
const err145 = {instancePath:instancePath+"/containers/" + i4+"/id",schemaPath:"#/properties/containers/items/properties/id/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$"},message:"must match pattern \""+"^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$"+"\""};
if(vErrors === null){
vErrors = [err145];
}
else {
vErrors.push(err145);
}
errors++;
}
}
else {
const err146 = {instancePath:instancePath+"/containers/" + i4+"/id",schemaPath:"#/properties/containers/items/properties/id/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err146];
}
else {
vErrors.push(err146);
}
errors++;
}
}
if(data54.kind !== undefined){
let data56 = data54.kind;
if(!(((((data56 === "tank") || (data56 === "tray")) || (data56 === "gutter")) || (data56 === "bed")) || (data56 === "bench"))){
const err147 = {instancePath:instancePath+"/containers/" + i4+"/kind",schemaPath:"#/properties/containers/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.containers.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err147];
}
else {
vErrors.push(err147);
}
errors++;
}
}
if(data54.rows !== undefined){
let data57 = data54.rows;
if(!(((typeof data57 == "number") && (!(data57 % 1) && !isNaN(data57))) && (isFinite(data57)))){
const err148 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err148];
}
else {
vErrors.push(err148);
}
errors++;
}
if((typeof data57 == "number") && (isFinite(data57))){
if(data57 > 1000 || isNaN(data57)){
const err149 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1000},message:"must be <= 1000"};
if(vErrors === null){
vErrors = [err149];
}
else {
vErrors.push(err149);
}
errors++;
}
if(data57 < 1 || isNaN(data57)){
const err150 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1},message:"must be >= 1"};
if(vErrors === null){
vErrors = [err150];
}
else {
vErrors.push(err150);
}
errors++;
}
}
}
if(data54.columns !== undefined){
let data58 = data54.columns;
if(!(((typeof data58 == "number") && (!(data58 % 1) && !isNaN(data58))) && (isFinite(data58)))){
const err151 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err151];
}
else {
vErrors.push(err151);
}
errors++;
}
if((typeof data58 == "number") && (isFinite(data58))){
if(data58 > 1000 || isNaN(data58)){
const err152 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1000},message:"must be <= 1000"};
if(vErrors === null){
vErrors = [err152];
}
else {
vErrors.push(err152);
}
errors++;
}
if(data58 < 1 || isNaN(data58)){
const err153 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1},message:"must be >= 1"};
if(vErrors === null){
vErrors = [err153];
}
else {
vErrors.push(err153);
}
errors++;
}
}
}
if(data54.row_1 !== undefined){
let data59 = data54.row_1;
if(typeof data59 === "string"){
if(func2(data59) > 60){
const err154 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err154];
}
else {
vErrors.push(err154);
}
errors++;
}
if(func2(data59) < 1){
const err155 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err155];
}
else {
vErrors.push(err155);
}
errors++;
}
}
else {
const err156 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err156];
}
else {
vErrors.push(err156);
}
errors++;
}
}
if(data54.column_1 !== undefined){
let data60 = data54.column_1;
if(typeof data60 === "string"){
if(func2(data60) > 60){
const err157 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err157];
}
else {
vErrors.push(err157);
}
errors++;
}
if(func2(data60) < 1){
const err158 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err158];
}
else {
vErrors.push(err158);
}
errors++;
}
}
else {
const err159 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err159];
}
else {
vErrors.push(err159);
}
errors++;
}
}
if(data54.block !== undefined){
let data61 = data54.block;
if(typeof data61 === "string"){
if(func2(data61) > 60){
const err160 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err160];
}
else {
vErrors.push(err160);
}
errors++;
}
if(func2(data61) < 1){
const err161 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err161];
}
else {
vErrors.push(err161);
}
errors++;
}
}
else {
const err162 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err162];
}
else {
vErrors.push(err162);
}
errors++;
}
}
if(data54.cover !== undefined){
if(!(validate60(data54.cover, {instancePath:instancePath+"/containers/" + i4+"/cover",parentData:data54,parentDataProperty:"cover",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate60.errors : vErrors.concat(validate60.errors);
errors = vErrors.length;
}
}
if(data54.inside !== undefined){
if(!(validate60(data54.inside, {instancePath:instancePath+"/containers/" + i4+"/inside",parentData:data54,parentDataProperty:"inside",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate60.errors : vErrors.concat(validate60.errors);
errors = vErrors.length;
}
}
if(data54.volume !== undefined){
let data64 = data54.volume;
if(data64 && typeof data64 == "object" && !Array.isArray(data64)){
if(data64.value === undefined){
const err163 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err163];
}
else {
vErrors.push(err163);
}
errors++;
}
if(data64.unit === undefined){
const err164 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/required",keyword:"required",params:{missingProperty: "unit"},message:"must have required property '"+"unit"+"'"};
if(vErrors === null){
vErrors = [err164];
}
else {
vErrors.push(err164);
}
errors++;
}
for(const key11 in data64){
if(!((key11 === "value") || (key11 === "unit"))){
const err165 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key11},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err165];
}
else {
vErrors.push(err165);
}
errors++;
}
}
if(data64.value !== undefined){
let data65 = data64.value;
if((typeof data65 == "number") && (isFinite(data65))){
if(data65 <= 0 || isNaN(data65)){
const err166 = {instancePath:instancePath+"/containers/" + i4+"/volume/value",schemaPath:"#/properties/containers/items/properties/volume/properties/value/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err166];
}
else {
vErrors.push(err166);
}
errors++;
}
}
else {
const err167 = {instancePath:instancePath+"/containers/" + i4+"/volume/value",schemaPath:"#/properties/containers/items/properties/volume/properties/value/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err167];
}
else {
vErrors.push(err167);
}
errors++;
}
}
if(data64.unit !== undefined){
let data66 = data64.unit;
if(!((((data66 === "L") || (data66 === "mL")) || (data66 === "m3")) || (data66 === "gal"))){
const err168 = {instancePath:instancePath+"/containers/" + i4+"/volume/unit",schemaPath:"#/properties/containers/items/properties/volume/properties/unit/enum",keyword:"enum",params:{allowedValues: schema19.properties.containers.items.properties.volume.properties.unit.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err168];
}
else {
vErrors.push(err168);
}
errors++;
}
}
}
else {
const err169 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err169];
}
else {
vErrors.push(err169);
}
errors++;
}
}
if(data54.treatment !== undefined){
let data67 = data54.treatment;
if(data67 && typeof data67 == "object" && !Array.isArray(data67)){
if(Object.keys(data67).length < 1){
const err170 = {instancePath:instancePath+"/containers/" + i4+"/treatment",schemaPath:"#/properties/containers/items/properties/treatment/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err170];
}
else {
vErrors.push(err170);
}
errors++;
}
for(const key12 in data67){
let data68 = data67[key12];
if(typeof data68 === "string"){
if(func2(data68) < 1){
const err171 = {instancePath:instancePath+"/containers/" + i4+"/treatment/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/containers/items/properties/treatment/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err171];
}
else {
vErrors.push(err171);
}
errors++;
}
}
else {
const err172 = {instancePath:instancePath+"/containers/" + i4+"/treatment/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/containers/items/properties/treatment/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err172];
}
else {
vErrors.push(err172);
}
errors++;
}
}
}
else {
const err173 = {instancePath:instancePath+"/containers/" + i4+"/treatment",schemaPath:"#/properties/containers/items/properties/treatment/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err173];
}
else {
vErrors.push(err173);
}
errors++;
}
}
if(data54.weighed_total !== undefined){
let data69 = data54.weighed_total;
if(data69 && typeof data69 == "object" && !Array.isArray(data69)){
if(data69.value === undefined){
const err174 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err174];
}
else {
vErrors.push(err174);
}
errors++;
}
if(data69.unit === undefined){
const err175 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/required",keyword:"required",params:{missingProperty: "unit"},message:"must have required property '"+"unit"+"'"};
if(vErrors === null){
vErrors = [err175];
}
else {
vErrors.push(err175);
}
errors++;
}
for(const key13 in data69){
if(!((key13 === "value") || (key13 === "unit"))){
const err176 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key13},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err176];
}
else {
vErrors.push(err176);
}
errors++;
}
}
if(data69.value !== undefined){
let data70 = data69.value;
if((typeof data70 == "number") && (isFinite(data70))){
if(data70 < 0 || isNaN(data70)){
const err177 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total/value",schemaPath:"#/properties/containers/items/properties/weighed_total/properties/value/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err177];
}
else {
vErrors.push(err177);
}
errors++;
}
}
else {
const err178 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total/value",schemaPath:"#/properties/containers/items/properties/weighed_total/properties/value/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err178];
}
else {
vErrors.push(err178);
}
errors++;
}
}
if(data69.unit !== undefined){
if(!(validate63(data69.unit, {instancePath:instancePath+"/containers/" + i4+"/weighed_total/unit",parentData:data69,parentDataProperty:"unit",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
errors = vErrors.length;
}
}
}
else {
const err179 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err179];
}
else {
vErrors.push(err179);
}
errors++;
}
}
}
else {
const err180 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err180];
}
else {
vErrors.push(err180);
}
errors++;
}
}
}
else {
const err181 = {instancePath:instancePath+"/containers",schemaPath:"#/properties/containers/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err181];
}
else {
vErrors.push(err181);
}
errors++;
}
}
if(data.variables !== undefined){
let data72 = data.variables;
if(Array.isArray(data72)){
if(data72.length < 1){
const err182 = {instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err182];
}
else {
vErrors.push(err182);
}
errors++;
}
const len5 = data72.length;
for(let i5=0; i5<len5; i5++){
let data73 = data72[i5];
if(data73 && typeof data73 == "object" && !Array.isArray(data73)){
if(data73.id === undefined){
const err183 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err183];
}
else {
vErrors.push(err183);
}
errors++;
}
if(data73.name === undefined){
const err184 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err184];
}
else {
vErrors.push(err184);
}
errors++;
}
if(data73.of === undefined){
const err185 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "of"},message:"must have required property '"+"of"+"'"};
if(vErrors === null){
vErrors = [err185];
}
else {
vErrors.push(err185);
}
errors++;
}
if(data73.kind === undefined){
const err186 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err186];
}
else {
vErrors.push(err186);
}
errors++;
}
for(const key14 in data73){
if(!(func1.call(schema19.properties.variables.items.properties, key14))){
const err187 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key14},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err187];
}
else {
vErrors.push(err187);
}
errors++;
}
}
if(data73.id !== undefined){
if(!(validate58(data73.id, {instancePath:instancePath+"/variables/" + i5+"/id",parentData:data73,parentDataProperty:"id",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
errors = vErrors.length;
}
}
if(data73.name !== undefined){
let data75 = data73.name;
if(typeof data75 === "string"){
if(func2(data75) > 100){
const err188 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err188];
}
else {
vErrors.push(err188);
}
errors++;
}
if(func2(data75) < 1){
const err189 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err189];
}
else {
vErrors.push(err189);
}
errors++;
}
}
else {
const err190 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err190];
}
else {
vErrors.push(err190);
}
errors++;
}
}
if(data73.of !== undefined){
let data76 = data73.of;
if(!((data76 === "plant") || (data76 === "pot"))){
const err191 = {instancePath:instancePath+"/variables/" + i5+"/of",schemaPath:"#/properties/variables/items/properties/of/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.of.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err191];
}
else {
vErrors.push(err191);
}
errors++;
}
}
if(data73.kind !== undefined){
let data77 = data73.kind;
if(!(((data77 === "measured") || (data77 === "counted")) || (data77 === "scored"))){
const err192 = {instancePath:instancePath+"/variables/" + i5+"/kind",schemaPath:"#/properties/variables/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err192];
}
else {
vErrors.push(err192);
}
errors++;
}
}
if(data73.unit !== undefined){
let data78 = data73.unit;
if(typeof data78 === "string"){
if(func2(data78) > 40){
const err193 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/maxLength",keyword:"maxLength",params:{limit: 40},message:"must NOT have more than 40 characters"};
if(vErrors === null){
vErrors = [err193];
}
else {
vErrors.push(err193);
}
errors++;
}
if(func2(data78) < 1){
const err194 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err194];
}
else {
vErrors.push(err194);
}
errors++;
}
}
else {
const err195 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err195];
}
else {
vErrors.push(err195);
}
errors++;
}
}
if(data73.resolution !== undefined){
let data79 = data73.resolution;
if((typeof data79 == "number") && (isFinite(data79))){
if(data79 <= 0 || isNaN(data79)){
const err196 = {instancePath:instancePath+"/variables/" + i5+"/resolution",schemaPath:"#/properties/variables/items/properties/resolution/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err196];
}
else {
vErrors.push(err196);
}
errors++;
}
}
else {
const err197 = {instancePath:instancePath+"/variables/" + i5+"/resolution",schemaPath:"#/properties/variables/items/properties/resolution/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err197];
}
else {
vErrors.push(err197);
}
errors++;
}
}
if(data73.lowest !== undefined){
let data80 = data73.lowest;
if(!((typeof data80 == "number") && (isFinite(data80)))){
const err198 = {instancePath:instancePath+"/variables/" + i5+"/lowest",schemaPath:"#/properties/variables/items/properties/lowest/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err198];
}
else {
vErrors.push(err198);
}
errors++;
}
}
if(data73.highest !== undefined){
let data81 = data73.highest;
if(!((typeof data81 == "number") && (isFinite(data81)))){
const err199 = {instancePath:instancePath+"/variables/" + i5+"/highest",schemaPath:"#/properties/variables/items/properties/highest/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err199];
}
else {
vErrors.push(err199);
}
errors++;
}
}
if(data73.scale !== undefined){
let data82 = data73.scale;
if(!((data82 === "yes or no") || (data82 === "BBCH"))){
const err200 = {instancePath:instancePath+"/variables/" + i5+"/scale",schemaPath:"#/properties/variables/items/properties/scale/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.scale.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err200];
}
else {
vErrors.push(err200);
}
errors++;
}
}
if(data73.marks !== undefined){
let data83 = data73.marks;
if(data83 && typeof data83 == "object" && !Array.isArray(data83)){
if(Object.keys(data83).length > 40){
const err201 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/maxProperties",keyword:"maxProperties",params:{limit: 40},message:"must NOT have more than 40 properties"};
if(vErrors === null){
vErrors = [err201];
}
else {
vErrors.push(err201);
}
errors++;
}
if(Object.keys(data83).length < 2){
const err202 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/minProperties",keyword:"minProperties",params:{limit: 2},message:"must NOT have fewer than 2 properties"};
if(vErrors === null){
vErrors = [err202];
}
else {
vErrors.push(err202);
}
errors++;
}
for(const key15 in data83){
const _errs165 = errors;
if(typeof key15 === "string"){
if(!pattern10.test(key15)){
const err203 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/propertyNames/pattern",keyword:"pattern",params:{pattern: "^-?[0-9]{1,3}$"},message:"must match pattern \""+"^-?[0-9]{1,3}$"+"\"",propertyName:key15};
if(vErrors === null){
vErrors = [err203];
}
else {
vErrors.push(err203);
}
errors++;
}
}
var valid31 = _errs165 === errors;
if(!valid31){
const err204 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/propertyNames",keyword:"propertyNames",params:{propertyName: key15},message:"property name must be valid"};
if(vErrors === null){
vErrors = [err204];
}
else {
vErrors.push(err204);
}
errors++;
}
}
for(const key16 in data83){
let data84 = data83[key16];
if(typeof data84 === "string"){
if(func2(data84) > 120){
const err205 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/maxLength",keyword:"maxLength",params:{limit: 120},message:"must NOT have more than 120 characters"};
if(vErrors === null){
vErrors = [err205];
}
else {
vErrors.push(err205);
}
errors++;
}
if(func2(data84) < 1){
const err206 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err206];
}
else {
vErrors.push(err206);
}
errors++;
}
}
else {
const err207 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err207];
}
else {
vErrors.push(err207);
}
errors++;
}
}
}
else {
const err208 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err208];
}
else {
vErrors.push(err208);
}
errors++;
}
}
if(data73.panel !== undefined){
let data85 = data73.panel;
if(typeof data85 === "string"){
if(func2(data85) > 60){
const err209 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err209];
}
else {
vErrors.push(err209);
}
errors++;
}
if(func2(data85) < 1){
const err210 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err210];
}
else {
vErrors.push(err210);
}
errors++;
}
}
else {
const err211 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err211];
}
else {
vErrors.push(err211);
}
errors++;
}
}
if(data73.judge !== undefined){
let data86 = data73.judge;
if(typeof data86 === "string"){
if(func2(data86) > 60){
const err212 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err212];
}
else {
vErrors.push(err212);
}
errors++;
}
if(func2(data86) < 1){
const err213 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err213];
}
else {
vErrors.push(err213);
}
errors++;
}
}
else {
const err214 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err214];
}
else {
vErrors.push(err214);
}
errors++;
}
}
if(data73.blind !== undefined){
if(typeof data73.blind !== "boolean"){
const err215 = {instancePath:instancePath+"/variables/" + i5+"/blind",schemaPath:"#/properties/variables/items/properties/blind/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err215];
}
else {
vErrors.push(err215);
}
errors++;
}
}
if(data73.trait !== undefined){
let data88 = data73.trait;
if(typeof data88 === "string"){
if(!pattern11.test(data88)){
const err216 = {instancePath:instancePath+"/variables/" + i5+"/trait",schemaPath:"#/properties/variables/items/properties/trait/pattern",keyword:"pattern",params:{pattern: "^TO:[0-9]{7}$"},message:"must match pattern \""+"^TO:[0-9]{7}$"+"\""};
if(vErrors === null){
vErrors = [err216];
}
else {
vErrors.push(err216);
}
errors++;
}
}
else {
const err217 = {instancePath:instancePath+"/variables/" + i5+"/trait",schemaPath:"#/properties/variables/items/properties/trait/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err217];
}
else {
vErrors.push(err217);
}
errors++;
}
}
if(data73.note !== undefined){
let data89 = data73.note;
if(typeof data89 === "string"){
if(func2(data89) > 1000){
const err218 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err218];
}
else {
vErrors.push(err218);
}
errors++;
}
if(func2(data89) < 1){
const err219 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err219];
}
else {
vErrors.push(err219);
}
errors++;
}
}
else {
const err220 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err220];
}
else {
vErrors.push(err220);
}
errors++;
}
}
}
else {
const err221 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err221];
}
else {
vErrors.push(err221);
}
errors++;
}
}
}
else {
const err222 = {instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err222];
}
else {
vErrors.push(err222);
}
errors++;
}
}
if(data.nutrients !== undefined){
let data90 = data.nutrients;
if(data90 && typeof data90 == "object" && !Array.isArray(data90)){
for(const key17 in data90){
if(!(((key17 === "water") || (key17 === "salts")) || (key17 === "stock_ratio"))){
const err223 = {instancePath:instancePath+"/nutrients",schemaPath:"#/properties/nutrients/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key17},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err223];
}
else {
vErrors.push(err223);
}
errors++;
}
}
if(data90.water !== undefined){
let data91 = data90.water;
if(data91 && typeof data91 == "object" && !Array.isArray(data91)){
for(const key18 in data91){
let data92 = data91[key18];
if((typeof data92 == "number") && (isFinite(data92))){
if(data92 < 0 || isNaN(data92)){
const err224 = {instancePath:instancePath+"/nutrients/water/" + key18.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/water/additionalProperties/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err224];
}
else {
vErrors.push(err224);
}
errors++;
}
}
else {
const err225 = {instancePath:instancePath+"/nutrients/water/" + key18.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/water/additionalProperties/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err225];
}
else {
vErrors.push(err225);
}
errors++;
}
}
}
else {
const err226 = {instancePath:instancePath+"/nutrients/water",schemaPath:"#/properties/nutrients/properties/water/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err226];
}
else {
vErrors.push(err226);
}
errors++;
}
}
if(data90.salts !== undefined){
let data93 = data90.salts;
if(Array.isArray(data93)){
if(data93.length < 1){
const err227 = {instancePath:instancePath+"/nutrients/salts",schemaPath:"#/properties/nutrients/properties/salts/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err227];
}
else {
vErrors.push(err227);
}
errors++;
}
const len6 = data93.length;
for(let i6=0; i6<len6; i6++){
let data94 = data93[i6];
if(data94 && typeof data94 == "object" && !Array.isArray(data94)){
if(data94.name === undefined){
const err228 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err228];
}
else {
vErrors.push(err228);
}
errors++;
}
if(data94.grams_per_litre === undefined){
const err229 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/required",keyword:"required",params:{missingProperty: "grams_per_litre"},message:"must have required property '"+"grams_per_litre"+"'"};
if(vErrors === null){
vErrors = [err229];
}
else {
vErrors.push(err229);
}
errors++;
}
for(const key19 in data94){
if(!(((((key19 === "name") || (key19 === "grams_per_litre")) || (key19 === "percent")) || (key19 === "formula")) || (key19 === "stock"))){
const err230 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key19},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err230];
}
else {
vErrors.push(err230);
}
errors++;
}
}
if(data94.name !== undefined){
let data95 = data94.name;
if(typeof data95 === "string"){
if(func2(data95) > 100){
const err231 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err231];
}
else {
vErrors.push(err231);
}
errors++;
}
if(func2(data95) < 1){
const err232 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err232];
}
else {
vErrors.push(err232);
}
errors++;
}
}
else {
const err233 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err233];
}
else {
vErrors.push(err233);
}
errors++;
}
}
if(data94.grams_per_litre !== undefined){
let data96 = data94.grams_per_litre;
if((typeof data96 == "number") && (isFinite(data96))){
if(data96 < 0 || isNaN(data96)){
const err234 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/grams_per_litre",schemaPath:"#/properties/nutrients/properties/salts/items/properties/grams_per_litre/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err234];
}
else {
vErrors.push(err234);
}
errors++;
}
}
else {
const err235 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/grams_per_litre",schemaPath:"#/properties/nutrients/properties/salts/items/properties/grams_per_litre/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err235];
}
else {
vErrors.push(err235);
}
errors++;
}
}
if(data94.percent !== undefined){
let data97 = data94.percent;
if(data97 && typeof data97 == "object" && !Array.isArray(data97)){
if(Object.keys(data97).length < 1){
const err236 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent",schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err236];
}
else {
vErrors.push(err236);
}
errors++;
}
for(const key20 in data97){
let data98 = data97[key20];
if((typeof data98 == "number") && (isFinite(data98))){
if(data98 > 100 || isNaN(data98)){
const err237 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/maximum",keyword:"maximum",params:{comparison: "<=", limit: 100},message:"must be <= 100"};
if(vErrors === null){
vErrors = [err237];
}
else {
vErrors.push(err237);
}
errors++;
}
if(data98 < 0 || isNaN(data98)){
const err238 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err238];
}
else {
vErrors.push(err238);
}
errors++;
}
}
else {
const err239 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err239];
}
else {
vErrors.push(err239);
}
errors++;
}
}
}
else {
const err240 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent",schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err240];
}
else {
vErrors.push(err240);
}
errors++;
}
}
if(data94.formula !== undefined){
let data99 = data94.formula;
if(typeof data99 === "string"){
if(func2(data99) > 100){
const err241 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err241];
}
else {
vErrors.push(err241);
}
errors++;
}
if(func2(data99) < 1){
const err242 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err242];
}
else {
vErrors.push(err242);
}
errors++;
}
}
else {
const err243 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err243];
}
else {
vErrors.push(err243);
}
errors++;
}
}
if(data94.stock !== undefined){
let data100 = data94.stock;
if(typeof data100 === "string"){
if(func2(data100) > 10){
const err244 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/maxLength",keyword:"maxLength",params:{limit: 10},message:"must NOT have more than 10 characters"};
if(vErrors === null){
vErrors = [err244];
}
else {
vErrors.push(err244);
}
errors++;
}
if(func2(data100) < 1){
const err245 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err245];
}
else {
vErrors.push(err245);
}
errors++;
}
}
else {
const err246 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err246];
}
else {
vErrors.push(err246);
}
errors++;
}
}
}
else {
const err247 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err247];
}
else {
vErrors.push(err247);
}
errors++;
}
}
}
else {
const err248 = {instancePath:instancePath+"/nutrients/salts",schemaPath:"#/properties/nutrients/properties/salts/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err248];
}
else {
vErrors.push(err248);
}
errors++;
}
}
if(data90.stock_ratio !== undefined){
let data101 = data90.stock_ratio;
if((typeof data101 == "number") && (isFinite(data101))){
if(data101 <= 0 || isNaN(data101)){
const err249 = {instancePath:instancePath+"/nutrients/stock_ratio",schemaPath:"#/properties/nutrients/properties/stock_ratio/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err249];
}
else {
vErrors.push(err249);
}
errors++;
}
}
else {
const err250 = {instancePath:instancePath+"/nutrients/stock_ratio",schemaPath:"#/properties/nutrients/properties/stock_ratio/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err250];
}
else {
vErrors.push(err250);
}
errors++;
}
}
}
else {
const err251 = {instancePath:instancePath+"/nutrients",schemaPath:"#/properties/nutrients/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err251];
}
else {
vErrors.push(err251);
}
errors++;
}
}
if(data.events !== undefined){
let data102 = data.events;
if(Array.isArray(data102)){
const len7 = data102.length;
for(let i7=0; i7<len7; i7++){
let data103 = data102[i7];
if(data103 && typeof data103 == "object" && !Array.isArray(data103)){
if(data103.date === undefined){
const err252 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/required",keyword:"required",params:{missingProperty: "date"},message:"must have required property '"+"date"+"'"};
if(vErrors === null){
vErrors = [err252];
}
else {
vErrors.push(err252);
}
errors++;
}
if(data103.what === undefined){
const err253 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/required",keyword:"required",params:{missingProperty: "what"},message:"must have required property '"+"what"+"'"};
if(vErrors === null){
vErrors = [err253];
}
else {
vErrors.push(err253);
}
errors++;
}
for(const key21 in data103){
if(!(((key21 === "date") || (key21 === "where")) || (key21 === "what"))){
const err254 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key21},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err254];
}
else {
vErrors.push(err254);
}
errors++;
}
}
if(data103.date !== undefined){
if(!(validate53(data103.date, {instancePath:instancePath+"/events/" + i7+"/date",parentData:data103,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data103.where !== undefined){
let data105 = data103.where;
if(typeof data105 === "string"){
if(func2(data105) > 100){
const err255 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err255];
}
else {
vErrors.push(err255);
}
errors++;
}
if(func2(data105) < 1){
const err256 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err256];
}
else {
vErrors.push(err256);
}
errors++;
}
}
else {
const err257 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err257];
}
else {
vErrors.push(err257);
}
errors++;
}
}
if(data103.what !== undefined){
let data106 = data103.what;
if(typeof data106 === "string"){
if(func2(data106) > 1000){
const err258 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err258];
}
else {
vErrors.push(err258);
}
errors++;
}
if(func2(data106) < 1){
const err259 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err259];
}
else {
vErrors.push(err259);
}
errors++;
}
}
else {
const err260 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err260];
}
else {
vErrors.push(err260);
}
errors++;
}
}
}
else {
const err261 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err261];
}
else {
vErrors.push(err261);
}
errors++;
}
}
}
else {
const err262 = {instancePath:instancePath+"/events",schemaPath:"#/properties/events/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err262];
}
else {
vErrors.push(err262);
}
errors++;
}
}
if(data.photos !== undefined){
let data107 = data.photos;
if(Array.isArray(data107)){
const len8 = data107.length;
for(let i8=0; i8<len8; i8++){
let data108 = data107[i8];
if(data108 && typeof data108 == "object" && !Array.isArray(data108)){
if(data108.file === undefined){
const err263 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/required",keyword:"required",params:{missingProperty: "file"},message:"must have required property '"+"file"+"'"};
if(vErrors === null){
vErrors = [err263];
}
else {
vErrors.push(err263);
}
errors++;
}
if(data108.alt === undefined){
const err264 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/required",keyword:"required",params:{missingProperty: "alt"},message:"must have required property '"+"alt"+"'"};
if(vErrors === null){
vErrors = [err264];
}
else {
vErrors.push(err264);
}
errors++;
}
for(const key22 in data108){
if(!(((((key22 === "file") || (key22 === "date")) || (key22 === "where")) || (key22 === "caption")) || (key22 === "alt"))){
const err265 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key22},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err265];
}
else {
vErrors.push(err265);
}
errors++;
}
}
if(data108.file !== undefined){
let data109 = data108.file;
if(typeof data109 === "string"){
if(func2(data109) > 200){
const err266 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err266];
}
else {
vErrors.push(err266);
}
errors++;
}
if(func2(data109) < 1){
const err267 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err267];
}
else {
vErrors.push(err267);
}
errors++;
}
}
else {
const err268 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err268];
}
else {
vErrors.push(err268);
}
errors++;
}
}
if(data108.date !== undefined){
if(!(validate53(data108.date, {instancePath:instancePath+"/photos/" + i8+"/date",parentData:data108,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data108.where !== undefined){
let data111 = data108.where;
if(typeof data111 === "string"){
if(func2(data111) > 100){
const err269 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err269];
}
else {
vErrors.push(err269);
}
errors++;
}
if(func2(data111) < 1){
const err270 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err270];
}
else {
vErrors.push(err270);
}
errors++;
}
}
else {
const err271 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err271];
}
else {
vErrors.push(err271);
}
errors++;
}
}
if(data108.caption !== undefined){
let data112 = data108.caption;
if(typeof data112 === "string"){
if(func2(data112) > 500){
const err272 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err272];
}
else {
vErrors.push(err272);
}
errors++;
}
if(func2(data112) < 1){
const err273 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err273];
}
else {
vErrors.push(err273);
}
errors++;
}
}
else {
const err274 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err274];
}
else {
vErrors.push(err274);
}
errors++;
}
}
if(data108.alt !== undefined){
let data113 = data108.alt;
if(typeof data113 === "string"){
if(func2(data113) > 500){
const err275 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err275];
}
else {
vErrors.push(err275);
}
errors++;
}
if(func2(data113) < 1){
const err276 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err276];
}
else {
vErrors.push(err276);
}
errors++;
}
}
else {
const err277 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err277];
}
else {
vErrors.push(err277);
}
errors++;
}
}
}
else {
const err278 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err278];
}
else {
vErrors.push(err278);
}
errors++;
}
}
}
else {
const err279 = {instancePath:instancePath+"/photos",schemaPath:"#/properties/photos/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err279];
}
else {
vErrors.push(err279);
}
errors++;
}
}
if(data.related !== undefined){
let data114 = data.related;
if(Array.isArray(data114)){
const len9 = data114.length;
for(let i9=0; i9<len9; i9++){
let data115 = data114[i9];
if(data115 && typeof data115 == "object" && !Array.isArray(data115)){
if(data115.kind === undefined){
const err280 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err280];
}
else {
vErrors.push(err280);
}
errors++;
}
if(data115.value === undefined){
const err281 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err281];
}
else {
vErrors.push(err281);
}
errors++;
}
for(const key23 in data115){
if(!((((key23 === "kind") || (key23 === "value")) || (key23 === "of")) || (key23 === "note"))){
const err282 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key23},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err282];
}
else {
vErrors.push(err282);
}
errors++;
}
}
if(data115.kind !== undefined){
let data116 = data115.kind;
if(!(((data116 === "doi") || (data116 === "orcid")) || (data116 === "url"))){
const err283 = {instancePath:instancePath+"/related/" + i9+"/kind",schemaPath:"#/properties/related/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.related.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err283];
}
else {
vErrors.push(err283);
}
errors++;
}
}
if(data115.value !== undefined){
let data117 = data115.value;
if(typeof data117 === "string"){
if(func2(data117) > 500){
const err284 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err284];
}
else {
vErrors.push(err284);
}
errors++;
}
if(func2(data117) < 1){
const err285 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err285];
}
else {
vErrors.push(err285);
}
errors++;
}
}
else {
const err286 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err286];
}
else {
vErrors.push(err286);
}
errors++;
}
}
if(data115.of !== undefined){
if(!(data115.of === "this")){
const err287 = {instancePath:instancePath+"/related/" + i9+"/of",schemaPath:"#/properties/related/items/properties/of/enum",keyword:"enum",params:{allowedValues: schema19.properties.related.items.properties.of.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err287];
}
else {
vErrors.push(err287);
}
errors++;
}
}
if(data115.note !== undefined){
let data119 = data115.note;
if(typeof data119 === "string"){
if(func2(data119) > 300){
const err288 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 300},message:"must NOT have more than 300 characters"};
if(vErrors === null){
vErrors = [err288];
}
else {
vErrors.push(err288);
}
errors++;
}
if(func2(data119) < 1){
const err289 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err289];
}
else {
vErrors.push(err289);
}
errors++;
}
}
else {
const err290 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err290];
}
else {
vErrors.push(err290);
}
errors++;
}
}
}
else {
const err291 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err291];
}
else {
vErrors.push(err291);
}
errors++;
}
}
}
else {
const err292 = {instancePath:instancePath+"/related",schemaPath:"#/properties/related/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err292];
}
else {
vErrors.push(err292);
}
errors++;
}
}
if(data.accepted !== undefined){
let data120 = data.accepted;
if(Array.isArray(data120)){
const len10 = data120.length;
for(let i10=0; i10<len10; i10++){
let data121 = data120[i10];
if(data121 && typeof data121 == "object" && !Array.isArray(data121)){
if(data121.rule === undefined){
const err293 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/required",keyword:"required",params:{missingProperty: "rule"},message:"must have required property '"+"rule"+"'"};
if(vErrors === null){
vErrors = [err293];
}
else {
vErrors.push(err293);
}
errors++;
}
if(data121.reason === undefined){
const err294 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/required",keyword:"required",params:{missingProperty: "reason"},message:"must have required property '"+"reason"+"'"};
if(vErrors === null){
vErrors = [err294];
}
else {
vErrors.push(err294);
}
errors++;
}
for(const key24 in data121){
if(!(((key24 === "rule") || (key24 === "where")) || (key24 === "reason"))){
const err295 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key24},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err295];
}
else {
vErrors.push(err295);
}
errors++;
}
}
if(data121.rule !== undefined){
let data122 = data121.rule;
if(typeof data122 === "string"){
if(func2(data122) > 60){
const err296 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err296];
}
else {
vErrors.push(err296);
}
errors++;
}
if(func2(data122) < 1){
const err297 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err297];
}
else {
vErrors.push(err297);
}
errors++;
}
}
else {
const err298 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err298];
}
else {
vErrors.push(err298);
}
errors++;
}
}
if(data121.where !== undefined){
let data123 = data121.where;
if(typeof data123 === "string"){
if(func2(data123) > 100){
const err299 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err299];
}
else {
vErrors.push(err299);
}
errors++;
}
if(func2(data123) < 1){
const err300 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err300];
}
else {
vErrors.push(err300);
}
errors++;
}
}
else {
const err301 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err301];
}
else {
vErrors.push(err301);
}
errors++;
}
}
if(data121.reason !== undefined){
let data124 = data121.reason;
if(typeof data124 === "string"){
if(func2(data124) > 1000){
const err302 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err302];
}
else {
vErrors.push(err302);
}
errors++;
}
if(func2(data124) < 3){
const err303 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/minLength",keyword:"minLength",params:{limit: 3},message:"must NOT have fewer than 3 characters"};
if(vErrors === null){
vErrors = [err303];
}
else {
vErrors.push(err303);
}
errors++;
}
}
else {
const err304 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err304];
}
else {
vErrors.push(err304);
}
errors++;
}
}
}
else {
const err305 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err305];
}
else {
vErrors.push(err305);
}
errors++;
}
}
}
else {
const err306 = {instancePath:instancePath+"/accepted",schemaPath:"#/properties/accepted/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err306];
}
else {
vErrors.push(err306);
}
errors++;
}
}
if(data.releases !== undefined){
let data125 = data.releases;
if(Array.isArray(data125)){
if(data125.length < 1){
const err307 = {instancePath:instancePath+"/releases",schemaPath:"#/properties/releases/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err307];
}
else {
vErrors.push(err307);
}
errors++;
}
const len11 = data125.length;
for(let i11=0; i11<len11; i11++){
let data126 = data125[i11];
if(data126 && typeof data126 == "object" && !Array.isArray(data126)){
if(data126.version === undefined){
const err308 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/required",keyword:"required",params:{missingProperty: "version"},message:"must have required property '"+"version"+"'"};
if(vErrors === null){
vErrors = [err308];
}
else {
vErrors.push(err308);
}
errors++;
}
if(data126.date === undefined){
const err309 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/required",keyword:"required",params:{missingProperty: "date"},message:"must have required property '"+"date"+"'"};
if(vErrors === null){
vErrors = [err309];
}
else {
vErrors.push(err309);
}
errors++;
}
for(const key25 in data126){
if(!(((key25 === "version") || (key25 === "date")) || (key25 === "note"))){
const err310 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key25},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err310];
}
else {
vErrors.push(err310);
}
errors++;
}
}
if(data126.version !== undefined){
let data127 = data126.version;
if(typeof data127 === "string"){
if(!pattern3.test(data127)){
const err311 = {instancePath:instancePath+"/releases/" + i11+"/version",schemaPath:"#/properties/releases/items/properties/version/pattern",keyword:"pattern",params:{pattern: "^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"},message:"must match pattern \""+"^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"+"\""};
if(vErrors === null){
vErrors = [err311];
}
else {
vErrors.push(err311);
}
errors++;
}
}
else {
const err312 = {instancePath:instancePath+"/releases/" + i11+"/version",schemaPath:"#/properties/releases/items/properties/version/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err312];
}
else {
vErrors.push(err312);
}
errors++;
}
}
if(data126.date !== undefined){
if(!(validate53(data126.date, {instancePath:instancePath+"/releases/" + i11+"/date",parentData:data126,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data126.note !== undefined){
let data129 = data126.note;
if(typeof data129 === "string"){
if(func2(data129) > 1000){
const err313 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err313];
}
else {
vErrors.push(err313);
}
errors++;
}
if(func2(data129) < 1){
const err314 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err314];
}
else {
vErrors.push(err314);
}
errors++;
}
}
else {
const err315 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err315];
}
else {
vErrors.push(err315);
}
errors++;
}
}
}
else {
const err316 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err316];
}
else {
vErrors.push(err316);
}
errors++;
}
}
}
else {
const err317 = {instancePath:instancePath+"/releases",schemaPath:"#/properties/releases/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err317];
}
else {
vErrors.push(err317);
}
errors++;
}
}
if(data.harvest !== undefined){
let data130 = data.harvest;
if(data130 && typeof data130 == "object" && !Array.isArray(data130)){
for(const key26 in data130){
if(!(((key26 === "columns") || (key26 === "delimiter")) || (key26 === "decimal"))){
const err318 = {instancePath:instancePath+"/harvest",schemaPath:"#/properties/harvest/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key26},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err318];
}
else {
vErrors.push(err318);
}
errors++;
}
}
if(data130.columns !== undefined){
let data131 = data130.columns;
if(data131 && typeof data131 == "object" && !Array.isArray(data131)){
for(const key27 in data131){
let data132 = data131[key27];
if(data132 && typeof data132 == "object" && !Array.isArray(data132)){
if(data132.column === undefined){
const err319 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/required",keyword:"required",params:{missingProperty: "column"},message:"must have required property '"+"column"+"'"};
if(vErrors === null){
vErrors = [err319];
}
else {
vErrors.push(err319);
}
errors++;
}
for(const key28 in data132){
if(!((key28 === "column") || (key28 === "unit"))){
const err320 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key28},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err320];
}
else {
vErrors.push(err320);
}
errors++;
}
}
if(data132.column !== undefined){
let data133 = data132.column;
if(typeof data133 === "string"){
if(func2(data133) > 100){
const err321 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err321];
}
else {
vErrors.push(err321);
}
errors++;
}
if(func2(data133) < 1){
const err322 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err322];
}
else {
vErrors.push(err322);
}
errors++;
}
}
else {
const err323 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err323];
}
else {
vErrors.push(err323);
}
errors++;
}
}
if(data132.unit !== undefined){
let data134 = data132.unit;
if(typeof data134 === "string"){
if(func2(data134) > 40){
const err324 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/maxLength",keyword:"maxLength",params:{limit: 40},message:"must NOT have more than 40 characters"};
if(vErrors === null){
vErrors = [err324];
}
else {
vErrors.push(err324);
}
errors++;
}
if(func2(data134) < 1){
const err325 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err325];
}
else {
vErrors.push(err325);
}
errors++;
}
}
else {
const err326 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err326];
}
else {
vErrors.push(err326);
}
errors++;
}
}
}
else {
const err327 = {instancePath:instancePath+"/harvest/columns/" + key27.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err327];
}
else {
vErrors.push(err327);
}
errors++;
}
}
}
else {
const err328 = {instancePath:instancePath+"/harvest/columns",schemaPath:"#/properties/harvest/properties/columns/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err328];
}
else {
vErrors.push(err328);
}
errors++;
}
}
if(data130.delimiter !== undefined){
let data135 = data130.delimiter;
if(!((((data135 === ",") || (data135 === ";")) || (data135 === "\t")) || (data135 === "|"))){
const err329 = {instancePath:instancePath+"/harvest/delimiter",schemaPath:"#/properties/harvest/properties/delimiter/enum",keyword:"enum",params:{allowedValues: schema19.properties.harvest.properties.delimiter.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err329];
}
else {
vErrors.push(err329);
}
errors++;
}
}
if(data130.decimal !== undefined){
let data136 = data130.decimal;
if(!((data136 === ".") || (data136 === ","))){
const err330 = {instancePath:instancePath+"/harvest/decimal",schemaPath:"#/properties/harvest/properties/decimal/enum",keyword:"enum",params:{allowedValues: schema19.properties.harvest.properties.decimal.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err330];
}
else {
vErrors.push(err330);
}
errors++;
}
}
}
else {
const err331 = {instancePath:instancePath+"/harvest",schemaPath:"#/properties/harvest/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err331];
}
else {
vErrors.push(err331);
}
errors++;
}
}
}
else {
const err332 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err332];
}
else {
vErrors.push(err332);
}
errors++;
}
validate52.errors = vErrors;
return errors === 0;
}
validate52.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const site = validate69;
const schema24 = siteSchema;
const formats2 = formats.uri;
const pattern13 = new RegExp("^https?://", "u");
const pattern14 = new RegExp("^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$", "u");

function validate69(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate69.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.title === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.url === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "url"},message:"must have required property '"+"url"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.publisher === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "publisher"},message:"must have required property '"+"publisher"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.licence === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "licence"},message:"must have required property '"+"licence"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema24.properties, key0))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.title !== undefined){
let data0 = data.title;
if(typeof data0 === "string"){
if(func2(data0) > 120){
const err5 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/maxLength",keyword:"maxLength",params:{limit: 120},message:"must NOT have more than 120 characters"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(func2(data0) < 2){
const err6 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.description !== undefined){
let data1 = data.description;
if(typeof data1 === "string"){
if(func2(data1) > 1000){
const err8 = {instancePath:instancePath+"/description",schemaPath:"#/properties/description/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(func2(data1) < 10){
const err9 = {instancePath:instancePath+"/description",schemaPath:"#/properties/description/minLength",keyword:"minLength",params:{limit: 10},message:"must NOT have fewer than 10 characters"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/description",schemaPath:"#/properties/description/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.url !== undefined){
let data2 = data.url;
if(typeof data2 === "string"){
if(!pattern13.test(data2)){
const err11 = {instancePath:instancePath+"/url",schemaPath:"#/properties/url/pattern",keyword:"pattern",params:{pattern: "^https?://"},message:"must match pattern \""+"^https?://"+"\""};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(!(formats2(data2))){
const err12 = {instancePath:instancePath+"/url",schemaPath:"#/properties/url/format",keyword:"format",params:{format: "uri"},message:"must match format \""+"uri"+"\""};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
else {
const err13 = {instancePath:instancePath+"/url",schemaPath:"#/properties/url/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.publisher !== undefined){
let data3 = data.publisher;
if(typeof data3 === "string"){
if(func2(data3) > 200){
const err14 = {instancePath:instancePath+"/publisher",schemaPath:"#/properties/publisher/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(func2(data3) < 2){
const err15 = {instancePath:instancePath+"/publisher",schemaPath:"#/properties/publisher/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
else {
const err16 = {instancePath:instancePath+"/publisher",schemaPath:"#/properties/publisher/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.licence !== undefined){
let data4 = data.licence;
if(typeof data4 === "string"){
if(func2(data4) > 60){
const err17 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
if(func2(data4) < 2){
const err18 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.language !== undefined){
let data5 = data.language;
if(typeof data5 === "string"){
if(!pattern14.test(data5)){
const err20 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/pattern",keyword:"pattern",params:{pattern: "^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$"},message:"must match pattern \""+"^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$"+"\""};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.units !== undefined){
let data6 = data.units;
if(!((data6 === "metric") || (data6 === "us"))){
const err22 = {instancePath:instancePath+"/units",schemaPath:"#/properties/units/enum",keyword:"enum",params:{allowedValues: schema24.properties.units.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data.gather !== undefined){
let data7 = data.gather;
if(Array.isArray(data7)){
if(data7.length > 50){
const err23 = {instancePath:instancePath+"/gather",schemaPath:"#/properties/gather/maxItems",keyword:"maxItems",params:{limit: 50},message:"must NOT have more than 50 items"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
const len0 = data7.length;
for(let i0=0; i0<len0; i0++){
let data8 = data7[i0];
if(data8 && typeof data8 == "object" && !Array.isArray(data8)){
if(data8.title === undefined){
const err24 = {instancePath:instancePath+"/gather/" + i0,schemaPath:"#/properties/gather/items/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
if(data8.address === undefined){
const err25 = {instancePath:instancePath+"/gather/" + i0,schemaPath:"#/properties/gather/items/required",keyword:"required",params:{missingProperty: "address"},message:"must have required property '"+"address"+"'"};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
for(const key1 in data8){
if(!((key1 === "title") || (key1 === "address"))){
const err26 = {instancePath:instancePath+"/gather/" + i0,schemaPath:"#/properties/gather/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
if(data8.title !== undefined){
let data9 = data8.title;
if(typeof data9 === "string"){
if(func2(data9) > 60){
const err27 = {instancePath:instancePath+"/gather/" + i0+"/title",schemaPath:"#/properties/gather/items/properties/title/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
if(func2(data9) < 2){
const err28 = {instancePath:instancePath+"/gather/" + i0+"/title",schemaPath:"#/properties/gather/items/properties/title/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath:instancePath+"/gather/" + i0+"/title",schemaPath:"#/properties/gather/items/properties/title/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data8.address !== undefined){
let data10 = data8.address;
if(typeof data10 === "string"){
if(func2(data10) > 300){
const err30 = {instancePath:instancePath+"/gather/" + i0+"/address",schemaPath:"#/properties/gather/items/properties/address/maxLength",keyword:"maxLength",params:{limit: 300},message:"must NOT have more than 300 characters"};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
if(!pattern13.test(data10)){
const err31 = {instancePath:instancePath+"/gather/" + i0+"/address",schemaPath:"#/properties/gather/items/properties/address/pattern",keyword:"pattern",params:{pattern: "^https?://"},message:"must match pattern \""+"^https?://"+"\""};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
if(!(formats2(data10))){
const err32 = {instancePath:instancePath+"/gather/" + i0+"/address",schemaPath:"#/properties/gather/items/properties/address/format",keyword:"format",params:{format: "uri"},message:"must match format \""+"uri"+"\""};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
else {
const err33 = {instancePath:instancePath+"/gather/" + i0+"/address",schemaPath:"#/properties/gather/items/properties/address/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
}
else {
const err34 = {instancePath:instancePath+"/gather/" + i0,schemaPath:"#/properties/gather/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
}
else {
const err35 = {instancePath:instancePath+"/gather",schemaPath:"#/properties/gather/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data.disclaimer !== undefined){
let data11 = data.disclaimer;
if(typeof data11 === "string"){
if(func2(data11) > 4000){
const err36 = {instancePath:instancePath+"/disclaimer",schemaPath:"#/properties/disclaimer/maxLength",keyword:"maxLength",params:{limit: 4000},message:"must NOT have more than 4000 characters"};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
if(func2(data11) < 10){
const err37 = {instancePath:instancePath+"/disclaimer",schemaPath:"#/properties/disclaimer/minLength",keyword:"minLength",params:{limit: 10},message:"must NOT have fewer than 10 characters"};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
else {
const err38 = {instancePath:instancePath+"/disclaimer",schemaPath:"#/properties/disclaimer/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data.equal_opportunity !== undefined){
let data12 = data.equal_opportunity;
if(typeof data12 === "string"){
if(func2(data12) > 4000){
const err39 = {instancePath:instancePath+"/equal_opportunity",schemaPath:"#/properties/equal_opportunity/maxLength",keyword:"maxLength",params:{limit: 4000},message:"must NOT have more than 4000 characters"};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
if(func2(data12) < 10){
const err40 = {instancePath:instancePath+"/equal_opportunity",schemaPath:"#/properties/equal_opportunity/minLength",keyword:"minLength",params:{limit: 10},message:"must NOT have fewer than 10 characters"};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
else {
const err41 = {instancePath:instancePath+"/equal_opportunity",schemaPath:"#/properties/equal_opportunity/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
}
else {
const err42 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
validate69.errors = vErrors;
return errors === 0;
}
validate69.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const cultivars = validate70;
const schema25 = cultivarsSchema;
const pattern16 = new RegExp("^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$", "u");

function validate70(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate70.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(Array.isArray(data)){
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
let data0 = data[i0];
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.id === undefined){
const err0 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data0.name === undefined){
const err1 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data0){
if(!(((((key0 === "id") || (key0 === "name")) || (key0 === "species")) || (key0 === "synonyms")) || (key0 === "note"))){
const err2 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data0.id !== undefined){
let data1 = data0.id;
if(typeof data1 === "string"){
if(!pattern16.test(data1)){
const err3 = {instancePath:instancePath+"/" + i0+"/id",schemaPath:"#/items/properties/id/pattern",keyword:"pattern",params:{pattern: "^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$"},message:"must match pattern \""+"^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$"+"\""};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
else {
const err4 = {instancePath:instancePath+"/" + i0+"/id",schemaPath:"#/items/properties/id/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data0.name !== undefined){
let data2 = data0.name;
if(typeof data2 === "string"){
if(func2(data2) > 100){
const err5 = {instancePath:instancePath+"/" + i0+"/name",schemaPath:"#/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(func2(data2) < 1){
const err6 = {instancePath:instancePath+"/" + i0+"/name",schemaPath:"#/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/" + i0+"/name",schemaPath:"#/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data0.species !== undefined){
let data3 = data0.species;
if(typeof data3 === "string"){
if(func2(data3) > 100){
const err8 = {instancePath:instancePath+"/" + i0+"/species",schemaPath:"#/items/properties/species/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(func2(data3) < 3){
const err9 = {instancePath:instancePath+"/" + i0+"/species",schemaPath:"#/items/properties/species/minLength",keyword:"minLength",params:{limit: 3},message:"must NOT have fewer than 3 characters"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/" + i0+"/species",schemaPath:"#/items/properties/species/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data0.synonyms !== undefined){
let data4 = data0.synonyms;
if(Array.isArray(data4)){
const len1 = data4.length;
for(let i1=0; i1<len1; i1++){
let data5 = data4[i1];
if(typeof data5 === "string"){
if(func2(data5) < 1){
const err11 = {instancePath:instancePath+"/" + i0+"/synonyms/" + i1,schemaPath:"#/items/properties/synonyms/items/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath:instancePath+"/" + i0+"/synonyms/" + i1,schemaPath:"#/items/properties/synonyms/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
}
else {
const err13 = {instancePath:instancePath+"/" + i0+"/synonyms",schemaPath:"#/items/properties/synonyms/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data0.note !== undefined){
let data6 = data0.note;
if(typeof data6 === "string"){
if(func2(data6) > 2000){
const err14 = {instancePath:instancePath+"/" + i0+"/note",schemaPath:"#/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 2000},message:"must NOT have more than 2000 characters"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(func2(data6) < 1){
const err15 = {instancePath:instancePath+"/" + i0+"/note",schemaPath:"#/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
else {
const err16 = {instancePath:instancePath+"/" + i0+"/note",schemaPath:"#/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
}
else {
const err17 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
}
else {
const err18 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
validate70.errors = vErrors;
return errors === 0;
}
validate70.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

export const sheet = validate71;
const schema26 = sheetSchema;
const pattern17 = new RegExp("^[a-z0-9-]{3,64}$", "u");

function validate71(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate71.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.title === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.summary === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "summary"},message:"must have required property '"+"summary"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.trials === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "trials"},message:"must have required property '"+"trials"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.date === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "date"},message:"must have required property '"+"date"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "title") || (key0 === "summary")) || (key0 === "trials")) || (key0 === "date")) || (key0 === "people"))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.title !== undefined){
let data0 = data.title;
if(typeof data0 === "string"){
if(func2(data0) > 200){
const err5 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(func2(data0) < 5){
const err6 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/minLength",keyword:"minLength",params:{limit: 5},message:"must NOT have fewer than 5 characters"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/title",schemaPath:"#/properties/title/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.summary !== undefined){
let data1 = data.summary;
if(typeof data1 === "string"){
if(func2(data1) > 1000){
const err8 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(func2(data1) < 20){
const err9 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/minLength",keyword:"minLength",params:{limit: 20},message:"must NOT have fewer than 20 characters"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/summary",schemaPath:"#/properties/summary/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.trials !== undefined){
let data2 = data.trials;
if(Array.isArray(data2)){
if(data2.length > 100){
const err11 = {instancePath:instancePath+"/trials",schemaPath:"#/properties/trials/maxItems",keyword:"maxItems",params:{limit: 100},message:"must NOT have more than 100 items"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(data2.length < 1){
const err12 = {instancePath:instancePath+"/trials",schemaPath:"#/properties/trials/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len0 = data2.length;
for(let i0=0; i0<len0; i0++){
let data3 = data2[i0];
if(typeof data3 === "string"){
if(!pattern17.test(data3)){
const err13 = {instancePath:instancePath+"/trials/" + i0,schemaPath:"#/properties/trials/items/pattern",keyword:"pattern",params:{pattern: "^[a-z0-9-]{3,64}$"},message:"must match pattern \""+"^[a-z0-9-]{3,64}$"+"\""};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/trials/" + i0,schemaPath:"#/properties/trials/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
}
else {
const err15 = {instancePath:instancePath+"/trials",schemaPath:"#/properties/trials/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.date !== undefined){
let data4 = data.date;
if(typeof data4 === "string"){
if(!(formats0(data4))){
const err16 = {instancePath:instancePath+"/date",schemaPath:"#/properties/date/format",keyword:"format",params:{format: "date"},message:"must match format \""+"date"+"\""};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
else {
const err17 = {instancePath:instancePath+"/date",schemaPath:"#/properties/date/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.people !== undefined){
let data5 = data.people;
if(Array.isArray(data5)){
if(data5.length > 50){
const err18 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/maxItems",keyword:"maxItems",params:{limit: 50},message:"must NOT have more than 50 items"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
if(data5.length < 1){
const err19 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
const len1 = data5.length;
for(let i1=0; i1<len1; i1++){
let data6 = data5[i1];
if(typeof data6 === "string"){
if(func2(data6) > 200){
const err20 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
if(func2(data6) < 2){
const err21 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
else {
const err22 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
}
else {
const err23 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
}
else {
const err24 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
validate71.errors = vErrors;
return errors === 0;
}
validate71.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};
