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
const pattern7 = new RegExp("^[^@\\s<>\",;]+@[^@\\s<>\",;]+\\.[^@\\s<>\",;]+$", "u");
const pattern9 = new RegExp("^[^\\s,;\"](.*[^\\s,;\"])?$", "u");
const pattern10 = new RegExp("^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$", "u");
const pattern11 = new RegExp("^-?[0-9]{1,3}$", "u");
const pattern12 = new RegExp("^TO:[0-9]{7}$", "u");
const pattern14 = new RegExp("^source/[^/\\\\]+$", "u");
const pattern15 = new RegExp("^[0-9a-f]{64}$", "u");
const pattern16 = new RegExp("^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$", "u");
const pattern18 = new RegExp("^(?:[1-9][0-9]*|[A-Z]{1,3})$", "u");
const pattern20 = new RegExp("^[1-9][0-9]*$", "u");
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
const pattern8 = new RegExp("^[A-Za-z][A-Za-z0-9_]{0,39}$", "u");

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
if(!pattern8.test(data)){
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
if(!(((((key5 === "name") || (key5 === "part")) || (key5 === "orcid")) || (key5 === "email")) || (key5 === "email_public"))){
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
if(data30.email !== undefined){
let data34 = data30.email;
if(typeof data34 === "string"){
if(func2(data34) > 254){
const err92 = {instancePath:instancePath+"/people/" + i1+"/email",schemaPath:"#/properties/people/items/properties/email/maxLength",keyword:"maxLength",params:{limit: 254},message:"must NOT have more than 254 characters"};
if(vErrors === null){
vErrors = [err92];
}
else {
vErrors.push(err92);
}
errors++;
}
if(!pattern7.test(data34)){
const err93 = {instancePath:instancePath+"/people/" + i1+"/email",schemaPath:"#/properties/people/items/properties/email/pattern",keyword:"pattern",params:{pattern: "^[^@\\s<>\",;]+@[^@\\s<>\",;]+\\.[^@\\s<>\",;]+$"},message:"must match pattern \""+"^[^@\\s<>\",;]+@[^@\\s<>\",;]+\\.[^@\\s<>\",;]+$"+"\""};
if(vErrors === null){
vErrors = [err93];
}
else {
vErrors.push(err93);
}
errors++;
}
}
else {
const err94 = {instancePath:instancePath+"/people/" + i1+"/email",schemaPath:"#/properties/people/items/properties/email/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err94];
}
else {
vErrors.push(err94);
}
errors++;
}
}
if(data30.email_public !== undefined){
if(typeof data30.email_public !== "boolean"){
const err95 = {instancePath:instancePath+"/people/" + i1+"/email_public",schemaPath:"#/properties/people/items/properties/email_public/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err95];
}
else {
vErrors.push(err95);
}
errors++;
}
}
}
else {
const err96 = {instancePath:instancePath+"/people/" + i1,schemaPath:"#/properties/people/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err96];
}
else {
vErrors.push(err96);
}
errors++;
}
}
}
else {
const err97 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err97];
}
else {
vErrors.push(err97);
}
errors++;
}
}
if(data.licence !== undefined){
let data36 = data.licence;
if(typeof data36 === "string"){
if(func2(data36) > 60){
const err98 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err98];
}
else {
vErrors.push(err98);
}
errors++;
}
if(func2(data36) < 2){
const err99 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/minLength",keyword:"minLength",params:{limit: 2},message:"must NOT have fewer than 2 characters"};
if(vErrors === null){
vErrors = [err99];
}
else {
vErrors.push(err99);
}
errors++;
}
}
else {
const err100 = {instancePath:instancePath+"/licence",schemaPath:"#/properties/licence/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err100];
}
else {
vErrors.push(err100);
}
errors++;
}
}
if(data.factors !== undefined){
let data37 = data.factors;
if(Array.isArray(data37)){
if(data37.length < 1){
const err101 = {instancePath:instancePath+"/factors",schemaPath:"#/properties/factors/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err101];
}
else {
vErrors.push(err101);
}
errors++;
}
const len2 = data37.length;
for(let i2=0; i2<len2; i2++){
let data38 = data37[i2];
if(data38 && typeof data38 == "object" && !Array.isArray(data38)){
if(data38.id === undefined){
const err102 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err102];
}
else {
vErrors.push(err102);
}
errors++;
}
if(data38.name === undefined){
const err103 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err103];
}
else {
vErrors.push(err103);
}
errors++;
}
if(data38.levels === undefined){
const err104 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/required",keyword:"required",params:{missingProperty: "levels"},message:"must have required property '"+"levels"+"'"};
if(vErrors === null){
vErrors = [err104];
}
else {
vErrors.push(err104);
}
errors++;
}
for(const key6 in data38){
if(!(((((key6 === "id") || (key6 === "name")) || (key6 === "kind")) || (key6 === "levels")) || (key6 === "check"))){
const err105 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key6},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err105];
}
else {
vErrors.push(err105);
}
errors++;
}
}
if(data38.id !== undefined){
if(!(validate58(data38.id, {instancePath:instancePath+"/factors/" + i2+"/id",parentData:data38,parentDataProperty:"id",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
errors = vErrors.length;
}
}
if(data38.name !== undefined){
let data40 = data38.name;
if(typeof data40 === "string"){
if(func2(data40) > 100){
const err106 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err106];
}
else {
vErrors.push(err106);
}
errors++;
}
if(func2(data40) < 1){
const err107 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err107];
}
else {
vErrors.push(err107);
}
errors++;
}
}
else {
const err108 = {instancePath:instancePath+"/factors/" + i2+"/name",schemaPath:"#/properties/factors/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err108];
}
else {
vErrors.push(err108);
}
errors++;
}
}
if(data38.kind !== undefined){
if("cultivar" !== data38.kind){
const err109 = {instancePath:instancePath+"/factors/" + i2+"/kind",schemaPath:"#/properties/factors/items/properties/kind/const",keyword:"const",params:{allowedValue: "cultivar"},message:"must be equal to constant"};
if(vErrors === null){
vErrors = [err109];
}
else {
vErrors.push(err109);
}
errors++;
}
}
if(data38.levels !== undefined){
let data42 = data38.levels;
if(Array.isArray(data42)){
if(data42.length < 1){
const err110 = {instancePath:instancePath+"/factors/" + i2+"/levels",schemaPath:"#/properties/factors/items/properties/levels/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err110];
}
else {
vErrors.push(err110);
}
errors++;
}
const len3 = data42.length;
for(let i3=0; i3<len3; i3++){
let data43 = data42[i3];
if(data43 && typeof data43 == "object" && !Array.isArray(data43)){
if(data43.id === undefined){
const err111 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err111];
}
else {
vErrors.push(err111);
}
errors++;
}
for(const key7 in data43){
if(!(((key7 === "id") || (key7 === "name")) || (key7 === "note"))){
const err112 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key7},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err112];
}
else {
vErrors.push(err112);
}
errors++;
}
}
if(data43.id !== undefined){
let data44 = data43.id;
if(typeof data44 === "string"){
if(func2(data44) > 64){
const err113 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/maxLength",keyword:"maxLength",params:{limit: 64},message:"must NOT have more than 64 characters"};
if(vErrors === null){
vErrors = [err113];
}
else {
vErrors.push(err113);
}
errors++;
}
if(func2(data44) < 1){
const err114 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err114];
}
else {
vErrors.push(err114);
}
errors++;
}
if(!pattern9.test(data44)){
const err115 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/pattern",keyword:"pattern",params:{pattern: "^[^\\s,;\"](.*[^\\s,;\"])?$"},message:"must match pattern \""+"^[^\\s,;\"](.*[^\\s,;\"])?$"+"\""};
if(vErrors === null){
vErrors = [err115];
}
else {
vErrors.push(err115);
}
errors++;
}
}
else {
const err116 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/id",schemaPath:"#/properties/factors/items/properties/levels/items/properties/id/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err116];
}
else {
vErrors.push(err116);
}
errors++;
}
}
if(data43.name !== undefined){
let data45 = data43.name;
if(typeof data45 === "string"){
if(func2(data45) > 100){
const err117 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err117];
}
else {
vErrors.push(err117);
}
errors++;
}
if(func2(data45) < 1){
const err118 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err118];
}
else {
vErrors.push(err118);
}
errors++;
}
}
else {
const err119 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/name",schemaPath:"#/properties/factors/items/properties/levels/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err119];
}
else {
vErrors.push(err119);
}
errors++;
}
}
if(data43.note !== undefined){
let data46 = data43.note;
if(typeof data46 === "string"){
if(func2(data46) > 1000){
const err120 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err120];
}
else {
vErrors.push(err120);
}
errors++;
}
if(func2(data46) < 1){
const err121 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
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
const err122 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3+"/note",schemaPath:"#/properties/factors/items/properties/levels/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
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
const err123 = {instancePath:instancePath+"/factors/" + i2+"/levels/" + i3,schemaPath:"#/properties/factors/items/properties/levels/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
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
const err124 = {instancePath:instancePath+"/factors/" + i2+"/levels",schemaPath:"#/properties/factors/items/properties/levels/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err124];
}
else {
vErrors.push(err124);
}
errors++;
}
}
if(data38.check !== undefined){
let data47 = data38.check;
if(typeof data47 === "string"){
if(func2(data47) < 1){
const err125 = {instancePath:instancePath+"/factors/" + i2+"/check",schemaPath:"#/properties/factors/items/properties/check/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err125];
}
else {
vErrors.push(err125);
}
errors++;
}
}
else {
const err126 = {instancePath:instancePath+"/factors/" + i2+"/check",schemaPath:"#/properties/factors/items/properties/check/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err126];
}
else {
vErrors.push(err126);
}
errors++;
}
}
}
else {
const err127 = {instancePath:instancePath+"/factors/" + i2,schemaPath:"#/properties/factors/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err127];
}
else {
vErrors.push(err127);
}
errors++;
}
}
}
else {
const err128 = {instancePath:instancePath+"/factors",schemaPath:"#/properties/factors/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err128];
}
else {
vErrors.push(err128);
}
errors++;
}
}
if(data.design !== undefined){
let data48 = data.design;
if(data48 && typeof data48 == "object" && !Array.isArray(data48)){
if(data48.arrangement === undefined){
const err129 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "arrangement"},message:"must have required property '"+"arrangement"+"'"};
if(vErrors === null){
vErrors = [err129];
}
else {
vErrors.push(err129);
}
errors++;
}
if(data48.allotted === undefined){
const err130 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "allotted"},message:"must have required property '"+"allotted"+"'"};
if(vErrors === null){
vErrors = [err130];
}
else {
vErrors.push(err130);
}
errors++;
}
if(data48.randomised === undefined){
const err131 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/required",keyword:"required",params:{missingProperty: "randomised"},message:"must have required property '"+"randomised"+"'"};
if(vErrors === null){
vErrors = [err131];
}
else {
vErrors.push(err131);
}
errors++;
}
for(const key8 in data48){
if(!(((((key8 === "arrangement") || (key8 === "allotted")) || (key8 === "randomised")) || (key8 === "seed")) || (key8 === "lot"))){
const err132 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key8},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err132];
}
else {
vErrors.push(err132);
}
errors++;
}
}
if(data48.arrangement !== undefined){
let data49 = data48.arrangement;
if(!(((((data49 === "unreplicated") || (data49 === "completely randomised")) || (data49 === "randomised blocks")) || (data49 === "latin square")) || (data49 === "split plot"))){
const err133 = {instancePath:instancePath+"/design/arrangement",schemaPath:"#/properties/design/properties/arrangement/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.arrangement.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err133];
}
else {
vErrors.push(err133);
}
errors++;
}
}
if(data48.allotted !== undefined){
let data50 = data48.allotted;
if(!(((data50 === "container") || (data50 === "plot")) || (data50 === "position"))){
const err134 = {instancePath:instancePath+"/design/allotted",schemaPath:"#/properties/design/properties/allotted/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.allotted.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err134];
}
else {
vErrors.push(err134);
}
errors++;
}
}
if(data48.randomised !== undefined){
if(typeof data48.randomised !== "boolean"){
const err135 = {instancePath:instancePath+"/design/randomised",schemaPath:"#/properties/design/properties/randomised/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err135];
}
else {
vErrors.push(err135);
}
errors++;
}
}
if(data48.seed !== undefined){
let data52 = data48.seed;
if(!(((typeof data52 == "number") && (!(data52 % 1) && !isNaN(data52))) && (isFinite(data52)))){
const err136 = {instancePath:instancePath+"/design/seed",schemaPath:"#/properties/design/properties/seed/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err136];
}
else {
vErrors.push(err136);
}
errors++;
}
if((typeof data52 == "number") && (isFinite(data52))){
if(data52 < 0 || isNaN(data52)){
const err137 = {instancePath:instancePath+"/design/seed",schemaPath:"#/properties/design/properties/seed/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
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
if(data48.lot !== undefined){
let data53 = data48.lot;
if(data53 && typeof data53 == "object" && !Array.isArray(data53)){
if(data53.method === undefined){
const err138 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/required",keyword:"required",params:{missingProperty: "method"},message:"must have required property '"+"method"+"'"};
if(vErrors === null){
vErrors = [err138];
}
else {
vErrors.push(err138);
}
errors++;
}
for(const key9 in data53){
if(!(key9 === "method")){
const err139 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key9},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err139];
}
else {
vErrors.push(err139);
}
errors++;
}
}
if(data53.method !== undefined){
if(!(data53.method === "lots-1")){
const err140 = {instancePath:instancePath+"/design/lot/method",schemaPath:"#/properties/design/properties/lot/properties/method/enum",keyword:"enum",params:{allowedValues: schema19.properties.design.properties.lot.properties.method.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err140];
}
else {
vErrors.push(err140);
}
errors++;
}
}
}
else {
const err141 = {instancePath:instancePath+"/design/lot",schemaPath:"#/properties/design/properties/lot/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err141];
}
else {
vErrors.push(err141);
}
errors++;
}
}
}
else {
const err142 = {instancePath:instancePath+"/design",schemaPath:"#/properties/design/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err142];
}
else {
vErrors.push(err142);
}
errors++;
}
}
if(data.containers !== undefined){
let data55 = data.containers;
if(Array.isArray(data55)){
if(data55.length < 1){
const err143 = {instancePath:instancePath+"/containers",schemaPath:"#/properties/containers/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err143];
}
else {
vErrors.push(err143);
}
errors++;
}
const len4 = data55.length;
for(let i4=0; i4<len4; i4++){
let data56 = data55[i4];
if(data56 && typeof data56 == "object" && !Array.isArray(data56)){
if(data56.id === undefined){
const err144 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err144];
}
else {
vErrors.push(err144);
}
errors++;
}
if(data56.kind === undefined){
const err145 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err145];
}
else {
vErrors.push(err145);
}
errors++;
}
if(data56.rows === undefined){
const err146 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "rows"},message:"must have required property '"+"rows"+"'"};
if(vErrors === null){
vErrors = [err146];
}
else {
vErrors.push(err146);
}
errors++;
}
if(data56.columns === undefined){
const err147 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/required",keyword:"required",params:{missingProperty: "columns"},message:"must have required property '"+"columns"+"'"};
if(vErrors === null){
vErrors = [err147];
}
else {
vErrors.push(err147);
}
errors++;
}
for(const key10 in data56){
if(!(func1.call(schema19.properties.containers.items.properties, key10))){
const err148 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key10},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err148];
}
else {
vErrors.push(err148);
}
errors++;
}
}
if(data56.id !== undefined){
let data57 = data56.id;
if(typeof data57 === "string"){
if(!pattern10.test(data57)){
const err149 = {instancePath:instancePath+"/containers/" + i4+"/id",schemaPath:"#/properties/containers/items/properties/id/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$"},message:"must match pattern \""+"^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$"+"\""};
if(vErrors === null){
vErrors = [err149];
}
else {
vErrors.push(err149);
}
errors++;
}
}
else {
const err150 = {instancePath:instancePath+"/containers/" + i4+"/id",schemaPath:"#/properties/containers/items/properties/id/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err150];
}
else {
vErrors.push(err150);
}
errors++;
}
}
if(data56.kind !== undefined){
let data58 = data56.kind;
if(!(((((data58 === "tank") || (data58 === "tray")) || (data58 === "gutter")) || (data58 === "bed")) || (data58 === "bench"))){
const err151 = {instancePath:instancePath+"/containers/" + i4+"/kind",schemaPath:"#/properties/containers/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.containers.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err151];
}
else {
vErrors.push(err151);
}
errors++;
}
}
if(data56.rows !== undefined){
let data59 = data56.rows;
if(!(((typeof data59 == "number") && (!(data59 % 1) && !isNaN(data59))) && (isFinite(data59)))){
const err152 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err152];
}
else {
vErrors.push(err152);
}
errors++;
}
if((typeof data59 == "number") && (isFinite(data59))){
if(data59 > 1000 || isNaN(data59)){
const err153 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1000},message:"must be <= 1000"};
if(vErrors === null){
vErrors = [err153];
}
else {
vErrors.push(err153);
}
errors++;
}
if(data59 < 1 || isNaN(data59)){
const err154 = {instancePath:instancePath+"/containers/" + i4+"/rows",schemaPath:"#/properties/containers/items/properties/rows/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1},message:"must be >= 1"};
if(vErrors === null){
vErrors = [err154];
}
else {
vErrors.push(err154);
}
errors++;
}
}
}
if(data56.columns !== undefined){
let data60 = data56.columns;
if(!(((typeof data60 == "number") && (!(data60 % 1) && !isNaN(data60))) && (isFinite(data60)))){
const err155 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err155];
}
else {
vErrors.push(err155);
}
errors++;
}
if((typeof data60 == "number") && (isFinite(data60))){
if(data60 > 1000 || isNaN(data60)){
const err156 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1000},message:"must be <= 1000"};
if(vErrors === null){
vErrors = [err156];
}
else {
vErrors.push(err156);
}
errors++;
}
if(data60 < 1 || isNaN(data60)){
const err157 = {instancePath:instancePath+"/containers/" + i4+"/columns",schemaPath:"#/properties/containers/items/properties/columns/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1},message:"must be >= 1"};
if(vErrors === null){
vErrors = [err157];
}
else {
vErrors.push(err157);
}
errors++;
}
}
}
if(data56.row_1 !== undefined){
let data61 = data56.row_1;
if(typeof data61 === "string"){
if(func2(data61) > 60){
const err158 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err158];
}
else {
vErrors.push(err158);
}
errors++;
}
if(func2(data61) < 1){
const err159 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err159];
}
else {
vErrors.push(err159);
}
errors++;
}
}
else {
const err160 = {instancePath:instancePath+"/containers/" + i4+"/row_1",schemaPath:"#/properties/containers/items/properties/row_1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err160];
}
else {
vErrors.push(err160);
}
errors++;
}
}
if(data56.column_1 !== undefined){
let data62 = data56.column_1;
if(typeof data62 === "string"){
if(func2(data62) > 60){
const err161 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err161];
}
else {
vErrors.push(err161);
}
errors++;
}
if(func2(data62) < 1){
const err162 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err162];
}
else {
vErrors.push(err162);
}
errors++;
}
}
else {
const err163 = {instancePath:instancePath+"/containers/" + i4+"/column_1",schemaPath:"#/properties/containers/items/properties/column_1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err163];
}
else {
vErrors.push(err163);
}
errors++;
}
}
if(data56.block !== undefined){
let data63 = data56.block;
if(typeof data63 === "string"){
if(func2(data63) > 60){
const err164 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err164];
}
else {
vErrors.push(err164);
}
errors++;
}
if(func2(data63) < 1){
const err165 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err165];
}
else {
vErrors.push(err165);
}
errors++;
}
}
else {
const err166 = {instancePath:instancePath+"/containers/" + i4+"/block",schemaPath:"#/properties/containers/items/properties/block/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err166];
}
else {
vErrors.push(err166);
}
errors++;
}
}
if(data56.cover !== undefined){
if(!(validate60(data56.cover, {instancePath:instancePath+"/containers/" + i4+"/cover",parentData:data56,parentDataProperty:"cover",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate60.errors : vErrors.concat(validate60.errors);
errors = vErrors.length;
}
}
if(data56.inside !== undefined){
if(!(validate60(data56.inside, {instancePath:instancePath+"/containers/" + i4+"/inside",parentData:data56,parentDataProperty:"inside",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate60.errors : vErrors.concat(validate60.errors);
errors = vErrors.length;
}
}
if(data56.volume !== undefined){
let data66 = data56.volume;
if(data66 && typeof data66 == "object" && !Array.isArray(data66)){
if(data66.value === undefined){
const err167 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err167];
}
else {
vErrors.push(err167);
}
errors++;
}
if(data66.unit === undefined){
const err168 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/required",keyword:"required",params:{missingProperty: "unit"},message:"must have required property '"+"unit"+"'"};
if(vErrors === null){
vErrors = [err168];
}
else {
vErrors.push(err168);
}
errors++;
}
for(const key11 in data66){
if(!((key11 === "value") || (key11 === "unit"))){
const err169 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key11},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err169];
}
else {
vErrors.push(err169);
}
errors++;
}
}
if(data66.value !== undefined){
let data67 = data66.value;
if((typeof data67 == "number") && (isFinite(data67))){
if(data67 <= 0 || isNaN(data67)){
const err170 = {instancePath:instancePath+"/containers/" + i4+"/volume/value",schemaPath:"#/properties/containers/items/properties/volume/properties/value/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err170];
}
else {
vErrors.push(err170);
}
errors++;
}
}
else {
const err171 = {instancePath:instancePath+"/containers/" + i4+"/volume/value",schemaPath:"#/properties/containers/items/properties/volume/properties/value/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err171];
}
else {
vErrors.push(err171);
}
errors++;
}
}
if(data66.unit !== undefined){
let data68 = data66.unit;
if(!((((data68 === "L") || (data68 === "mL")) || (data68 === "m3")) || (data68 === "gal"))){
const err172 = {instancePath:instancePath+"/containers/" + i4+"/volume/unit",schemaPath:"#/properties/containers/items/properties/volume/properties/unit/enum",keyword:"enum",params:{allowedValues: schema19.properties.containers.items.properties.volume.properties.unit.enum},message:"must be equal to one of the allowed values"};
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
const err173 = {instancePath:instancePath+"/containers/" + i4+"/volume",schemaPath:"#/properties/containers/items/properties/volume/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err173];
}
else {
vErrors.push(err173);
}
errors++;
}
}
if(data56.treatment !== undefined){
let data69 = data56.treatment;
if(data69 && typeof data69 == "object" && !Array.isArray(data69)){
if(Object.keys(data69).length < 1){
const err174 = {instancePath:instancePath+"/containers/" + i4+"/treatment",schemaPath:"#/properties/containers/items/properties/treatment/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err174];
}
else {
vErrors.push(err174);
}
errors++;
}
for(const key12 in data69){
let data70 = data69[key12];
if(typeof data70 === "string"){
if(func2(data70) < 1){
const err175 = {instancePath:instancePath+"/containers/" + i4+"/treatment/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/containers/items/properties/treatment/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err175];
}
else {
vErrors.push(err175);
}
errors++;
}
}
else {
const err176 = {instancePath:instancePath+"/containers/" + i4+"/treatment/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/containers/items/properties/treatment/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err176];
}
else {
vErrors.push(err176);
}
errors++;
}
}
}
else {
const err177 = {instancePath:instancePath+"/containers/" + i4+"/treatment",schemaPath:"#/properties/containers/items/properties/treatment/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err177];
}
else {
vErrors.push(err177);
}
errors++;
}
}
if(data56.weighed_total !== undefined){
let data71 = data56.weighed_total;
if(data71 && typeof data71 == "object" && !Array.isArray(data71)){
if(data71.value === undefined){
const err178 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err178];
}
else {
vErrors.push(err178);
}
errors++;
}
if(data71.unit === undefined){
const err179 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/required",keyword:"required",params:{missingProperty: "unit"},message:"must have required property '"+"unit"+"'"};
if(vErrors === null){
vErrors = [err179];
}
else {
vErrors.push(err179);
}
errors++;
}
for(const key13 in data71){
if(!((key13 === "value") || (key13 === "unit"))){
const err180 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key13},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err180];
}
else {
vErrors.push(err180);
}
errors++;
}
}
if(data71.value !== undefined){
let data72 = data71.value;
if((typeof data72 == "number") && (isFinite(data72))){
if(data72 < 0 || isNaN(data72)){
const err181 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total/value",schemaPath:"#/properties/containers/items/properties/weighed_total/properties/value/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err181];
}
else {
vErrors.push(err181);
}
errors++;
}
}
else {
const err182 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total/value",schemaPath:"#/properties/containers/items/properties/weighed_total/properties/value/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err182];
}
else {
vErrors.push(err182);
}
errors++;
}
}
if(data71.unit !== undefined){
if(!(validate63(data71.unit, {instancePath:instancePath+"/containers/" + i4+"/weighed_total/unit",parentData:data71,parentDataProperty:"unit",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
errors = vErrors.length;
}
}
}
else {
const err183 = {instancePath:instancePath+"/containers/" + i4+"/weighed_total",schemaPath:"#/properties/containers/items/properties/weighed_total/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err183];
}
else {
vErrors.push(err183);
}
errors++;
}
}
}
else {
const err184 = {instancePath:instancePath+"/containers/" + i4,schemaPath:"#/properties/containers/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err184];
}
else {
vErrors.push(err184);
}
errors++;
}
}
}
else {
const err185 = {instancePath:instancePath+"/containers",schemaPath:"#/properties/containers/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err185];
}
else {
vErrors.push(err185);
}
errors++;
}
}
if(data.variables !== undefined){
let data74 = data.variables;
if(Array.isArray(data74)){
if(data74.length < 1){
const err186 = {instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err186];
}
else {
vErrors.push(err186);
}
errors++;
}
const len5 = data74.length;
for(let i5=0; i5<len5; i5++){
let data75 = data74[i5];
if(data75 && typeof data75 == "object" && !Array.isArray(data75)){
if(data75.id === undefined){
const err187 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "id"},message:"must have required property '"+"id"+"'"};
if(vErrors === null){
vErrors = [err187];
}
else {
vErrors.push(err187);
}
errors++;
}
if(data75.name === undefined){
const err188 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err188];
}
else {
vErrors.push(err188);
}
errors++;
}
if(data75.of === undefined){
const err189 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "of"},message:"must have required property '"+"of"+"'"};
if(vErrors === null){
vErrors = [err189];
}
else {
vErrors.push(err189);
}
errors++;
}
if(data75.kind === undefined){
const err190 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err190];
}
else {
vErrors.push(err190);
}
errors++;
}
for(const key14 in data75){
if(!(func1.call(schema19.properties.variables.items.properties, key14))){
const err191 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key14},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err191];
}
else {
vErrors.push(err191);
}
errors++;
}
}
if(data75.id !== undefined){
if(!(validate58(data75.id, {instancePath:instancePath+"/variables/" + i5+"/id",parentData:data75,parentDataProperty:"id",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
errors = vErrors.length;
}
}
if(data75.name !== undefined){
let data77 = data75.name;
if(typeof data77 === "string"){
if(func2(data77) > 100){
const err192 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err192];
}
else {
vErrors.push(err192);
}
errors++;
}
if(func2(data77) < 1){
const err193 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err193];
}
else {
vErrors.push(err193);
}
errors++;
}
}
else {
const err194 = {instancePath:instancePath+"/variables/" + i5+"/name",schemaPath:"#/properties/variables/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err194];
}
else {
vErrors.push(err194);
}
errors++;
}
}
if(data75.of !== undefined){
let data78 = data75.of;
if(!((data78 === "plant") || (data78 === "pot"))){
const err195 = {instancePath:instancePath+"/variables/" + i5+"/of",schemaPath:"#/properties/variables/items/properties/of/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.of.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err195];
}
else {
vErrors.push(err195);
}
errors++;
}
}
if(data75.kind !== undefined){
let data79 = data75.kind;
if(!(((data79 === "measured") || (data79 === "counted")) || (data79 === "scored"))){
const err196 = {instancePath:instancePath+"/variables/" + i5+"/kind",schemaPath:"#/properties/variables/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err196];
}
else {
vErrors.push(err196);
}
errors++;
}
}
if(data75.unit !== undefined){
let data80 = data75.unit;
if(typeof data80 === "string"){
if(func2(data80) > 40){
const err197 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/maxLength",keyword:"maxLength",params:{limit: 40},message:"must NOT have more than 40 characters"};
if(vErrors === null){
vErrors = [err197];
}
else {
vErrors.push(err197);
}
errors++;
}
if(func2(data80) < 1){
const err198 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err198];
}
else {
vErrors.push(err198);
}
errors++;
}
}
else {
const err199 = {instancePath:instancePath+"/variables/" + i5+"/unit",schemaPath:"#/properties/variables/items/properties/unit/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err199];
}
else {
vErrors.push(err199);
}
errors++;
}
}
if(data75.resolution !== undefined){
let data81 = data75.resolution;
if((typeof data81 == "number") && (isFinite(data81))){
if(data81 <= 0 || isNaN(data81)){
const err200 = {instancePath:instancePath+"/variables/" + i5+"/resolution",schemaPath:"#/properties/variables/items/properties/resolution/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0},message:"must be > 0"};
if(vErrors === null){
vErrors = [err200];
}
else {
vErrors.push(err200);
}
errors++;
}
}
else {
const err201 = {instancePath:instancePath+"/variables/" + i5+"/resolution",schemaPath:"#/properties/variables/items/properties/resolution/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err201];
}
else {
vErrors.push(err201);
}
errors++;
}
}
if(data75.lowest !== undefined){
let data82 = data75.lowest;
if(!((typeof data82 == "number") && (isFinite(data82)))){
const err202 = {instancePath:instancePath+"/variables/" + i5+"/lowest",schemaPath:"#/properties/variables/items/properties/lowest/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err202];
}
else {
vErrors.push(err202);
}
errors++;
}
}
if(data75.highest !== undefined){
let data83 = data75.highest;
if(!((typeof data83 == "number") && (isFinite(data83)))){
const err203 = {instancePath:instancePath+"/variables/" + i5+"/highest",schemaPath:"#/properties/variables/items/properties/highest/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err203];
}
else {
vErrors.push(err203);
}
errors++;
}
}
if(data75.scale !== undefined){
let data84 = data75.scale;
if(!((data84 === "yes or no") || (data84 === "BBCH"))){
const err204 = {instancePath:instancePath+"/variables/" + i5+"/scale",schemaPath:"#/properties/variables/items/properties/scale/enum",keyword:"enum",params:{allowedValues: schema19.properties.variables.items.properties.scale.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err204];
}
else {
vErrors.push(err204);
}
errors++;
}
}
if(data75.marks !== undefined){
let data85 = data75.marks;
if(data85 && typeof data85 == "object" && !Array.isArray(data85)){
if(Object.keys(data85).length > 40){
const err205 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/maxProperties",keyword:"maxProperties",params:{limit: 40},message:"must NOT have more than 40 properties"};
if(vErrors === null){
vErrors = [err205];
}
else {
vErrors.push(err205);
}
errors++;
}
if(Object.keys(data85).length < 2){
const err206 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/minProperties",keyword:"minProperties",params:{limit: 2},message:"must NOT have fewer than 2 properties"};
if(vErrors === null){
vErrors = [err206];
}
else {
vErrors.push(err206);
}
errors++;
}
for(const key15 in data85){
const _errs169 = errors;
if(typeof key15 === "string"){
if(!pattern11.test(key15)){
const err207 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/propertyNames/pattern",keyword:"pattern",params:{pattern: "^-?[0-9]{1,3}$"},message:"must match pattern \""+"^-?[0-9]{1,3}$"+"\"",propertyName:key15};
if(vErrors === null){
vErrors = [err207];
}
else {
vErrors.push(err207);
}
errors++;
}
}
var valid31 = _errs169 === errors;
if(!valid31){
const err208 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/propertyNames",keyword:"propertyNames",params:{propertyName: key15},message:"property name must be valid"};
if(vErrors === null){
vErrors = [err208];
}
else {
vErrors.push(err208);
}
errors++;
}
}
for(const key16 in data85){
let data86 = data85[key16];
if(typeof data86 === "string"){
if(func2(data86) > 120){
const err209 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/maxLength",keyword:"maxLength",params:{limit: 120},message:"must NOT have more than 120 characters"};
if(vErrors === null){
vErrors = [err209];
}
else {
vErrors.push(err209);
}
errors++;
}
if(func2(data86) < 1){
const err210 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
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
const err211 = {instancePath:instancePath+"/variables/" + i5+"/marks/" + key16.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/variables/items/properties/marks/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err211];
}
else {
vErrors.push(err211);
}
errors++;
}
}
}
else {
const err212 = {instancePath:instancePath+"/variables/" + i5+"/marks",schemaPath:"#/properties/variables/items/properties/marks/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err212];
}
else {
vErrors.push(err212);
}
errors++;
}
}
if(data75.panel !== undefined){
let data87 = data75.panel;
if(typeof data87 === "string"){
if(func2(data87) > 60){
const err213 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err213];
}
else {
vErrors.push(err213);
}
errors++;
}
if(func2(data87) < 1){
const err214 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err214];
}
else {
vErrors.push(err214);
}
errors++;
}
}
else {
const err215 = {instancePath:instancePath+"/variables/" + i5+"/panel",schemaPath:"#/properties/variables/items/properties/panel/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err215];
}
else {
vErrors.push(err215);
}
errors++;
}
}
if(data75.judge !== undefined){
let data88 = data75.judge;
if(typeof data88 === "string"){
if(func2(data88) > 60){
const err216 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err216];
}
else {
vErrors.push(err216);
}
errors++;
}
if(func2(data88) < 1){
const err217 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err217];
}
else {
vErrors.push(err217);
}
errors++;
}
}
else {
const err218 = {instancePath:instancePath+"/variables/" + i5+"/judge",schemaPath:"#/properties/variables/items/properties/judge/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err218];
}
else {
vErrors.push(err218);
}
errors++;
}
}
if(data75.blind !== undefined){
if(typeof data75.blind !== "boolean"){
const err219 = {instancePath:instancePath+"/variables/" + i5+"/blind",schemaPath:"#/properties/variables/items/properties/blind/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err219];
}
else {
vErrors.push(err219);
}
errors++;
}
}
if(data75.trait !== undefined){
let data90 = data75.trait;
if(typeof data90 === "string"){
if(!pattern12.test(data90)){
const err220 = {instancePath:instancePath+"/variables/" + i5+"/trait",schemaPath:"#/properties/variables/items/properties/trait/pattern",keyword:"pattern",params:{pattern: "^TO:[0-9]{7}$"},message:"must match pattern \""+"^TO:[0-9]{7}$"+"\""};
if(vErrors === null){
vErrors = [err220];
}
else {
vErrors.push(err220);
}
errors++;
}
}
else {
const err221 = {instancePath:instancePath+"/variables/" + i5+"/trait",schemaPath:"#/properties/variables/items/properties/trait/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err221];
}
else {
vErrors.push(err221);
}
errors++;
}
}
if(data75.note !== undefined){
let data91 = data75.note;
if(typeof data91 === "string"){
if(func2(data91) > 1000){
const err222 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err222];
}
else {
vErrors.push(err222);
}
errors++;
}
if(func2(data91) < 1){
const err223 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err223];
}
else {
vErrors.push(err223);
}
errors++;
}
}
else {
const err224 = {instancePath:instancePath+"/variables/" + i5+"/note",schemaPath:"#/properties/variables/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err224];
}
else {
vErrors.push(err224);
}
errors++;
}
}
}
else {
const err225 = {instancePath:instancePath+"/variables/" + i5,schemaPath:"#/properties/variables/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
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
const err226 = {instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err226];
}
else {
vErrors.push(err226);
}
errors++;
}
}
if(data.nutrients !== undefined){
let data92 = data.nutrients;
if(data92 && typeof data92 == "object" && !Array.isArray(data92)){
for(const key17 in data92){
if(!(((key17 === "water") || (key17 === "salts")) || (key17 === "stock_ratio"))){
const err227 = {instancePath:instancePath+"/nutrients",schemaPath:"#/properties/nutrients/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key17},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err227];
}
else {
vErrors.push(err227);
}
errors++;
}
}
if(data92.water !== undefined){
let data93 = data92.water;
if(data93 && typeof data93 == "object" && !Array.isArray(data93)){
for(const key18 in data93){
let data94 = data93[key18];
if((typeof data94 == "number") && (isFinite(data94))){
if(data94 < 0 || isNaN(data94)){
const err228 = {instancePath:instancePath+"/nutrients/water/" + key18.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/water/additionalProperties/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err228];
}
else {
vErrors.push(err228);
}
errors++;
}
}
else {
const err229 = {instancePath:instancePath+"/nutrients/water/" + key18.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/water/additionalProperties/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err229];
}
else {
vErrors.push(err229);
}
errors++;
}
}
}
else {
const err230 = {instancePath:instancePath+"/nutrients/water",schemaPath:"#/properties/nutrients/properties/water/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err230];
}
else {
vErrors.push(err230);
}
errors++;
}
}
if(data92.salts !== undefined){
let data95 = data92.salts;
if(Array.isArray(data95)){
if(data95.length < 1){
const err231 = {instancePath:instancePath+"/nutrients/salts",schemaPath:"#/properties/nutrients/properties/salts/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err231];
}
else {
vErrors.push(err231);
}
errors++;
}
const len6 = data95.length;
for(let i6=0; i6<len6; i6++){
let data96 = data95[i6];
if(data96 && typeof data96 == "object" && !Array.isArray(data96)){
if(data96.name === undefined){
const err232 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err232];
}
else {
vErrors.push(err232);
}
errors++;
}
if(data96.grams_per_litre === undefined){
const err233 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/required",keyword:"required",params:{missingProperty: "grams_per_litre"},message:"must have required property '"+"grams_per_litre"+"'"};
if(vErrors === null){
vErrors = [err233];
}
else {
vErrors.push(err233);
}
errors++;
}
for(const key19 in data96){
if(!(((((key19 === "name") || (key19 === "grams_per_litre")) || (key19 === "percent")) || (key19 === "formula")) || (key19 === "stock"))){
const err234 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key19},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err234];
}
else {
vErrors.push(err234);
}
errors++;
}
}
if(data96.name !== undefined){
let data97 = data96.name;
if(typeof data97 === "string"){
if(func2(data97) > 100){
const err235 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err235];
}
else {
vErrors.push(err235);
}
errors++;
}
if(func2(data97) < 1){
const err236 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err236];
}
else {
vErrors.push(err236);
}
errors++;
}
}
else {
const err237 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/name",schemaPath:"#/properties/nutrients/properties/salts/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err237];
}
else {
vErrors.push(err237);
}
errors++;
}
}
if(data96.grams_per_litre !== undefined){
let data98 = data96.grams_per_litre;
if((typeof data98 == "number") && (isFinite(data98))){
if(data98 < 0 || isNaN(data98)){
const err238 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/grams_per_litre",schemaPath:"#/properties/nutrients/properties/salts/items/properties/grams_per_litre/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
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
const err239 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/grams_per_litre",schemaPath:"#/properties/nutrients/properties/salts/items/properties/grams_per_litre/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err239];
}
else {
vErrors.push(err239);
}
errors++;
}
}
if(data96.percent !== undefined){
let data99 = data96.percent;
if(data99 && typeof data99 == "object" && !Array.isArray(data99)){
if(Object.keys(data99).length < 1){
const err240 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent",schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err240];
}
else {
vErrors.push(err240);
}
errors++;
}
for(const key20 in data99){
let data100 = data99[key20];
if((typeof data100 == "number") && (isFinite(data100))){
if(data100 > 100 || isNaN(data100)){
const err241 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/maximum",keyword:"maximum",params:{comparison: "<=", limit: 100},message:"must be <= 100"};
if(vErrors === null){
vErrors = [err241];
}
else {
vErrors.push(err241);
}
errors++;
}
if(data100 < 0 || isNaN(data100)){
const err242 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
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
const err243 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent/" + key20.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/additionalProperties/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err243];
}
else {
vErrors.push(err243);
}
errors++;
}
}
}
else {
const err244 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/percent",schemaPath:"#/properties/nutrients/properties/salts/items/properties/percent/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err244];
}
else {
vErrors.push(err244);
}
errors++;
}
}
if(data96.formula !== undefined){
let data101 = data96.formula;
if(typeof data101 === "string"){
if(func2(data101) > 100){
const err245 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err245];
}
else {
vErrors.push(err245);
}
errors++;
}
if(func2(data101) < 1){
const err246 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err246];
}
else {
vErrors.push(err246);
}
errors++;
}
}
else {
const err247 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/formula",schemaPath:"#/properties/nutrients/properties/salts/items/properties/formula/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err247];
}
else {
vErrors.push(err247);
}
errors++;
}
}
if(data96.stock !== undefined){
let data102 = data96.stock;
if(typeof data102 === "string"){
if(func2(data102) > 10){
const err248 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/maxLength",keyword:"maxLength",params:{limit: 10},message:"must NOT have more than 10 characters"};
if(vErrors === null){
vErrors = [err248];
}
else {
vErrors.push(err248);
}
errors++;
}
if(func2(data102) < 1){
const err249 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
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
const err250 = {instancePath:instancePath+"/nutrients/salts/" + i6+"/stock",schemaPath:"#/properties/nutrients/properties/salts/items/properties/stock/type",keyword:"type",params:{type: "string"},message:"must be string"};
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
const err251 = {instancePath:instancePath+"/nutrients/salts/" + i6,schemaPath:"#/properties/nutrients/properties/salts/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err251];
}
else {
vErrors.push(err251);
}
errors++;
}
}
}
else {
const err252 = {instancePath:instancePath+"/nutrients/salts",schemaPath:"#/properties/nutrients/properties/salts/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err252];
}
else {
vErrors.push(err252);
}
errors++;
}
}
if(data92.stock_ratio !== undefined){
let data103 = data92.stock_ratio;
if((typeof data103 == "number") && (isFinite(data103))){
if(data103 < 1 || isNaN(data103)){
const err253 = {instancePath:instancePath+"/nutrients/stock_ratio",schemaPath:"#/properties/nutrients/properties/stock_ratio/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1},message:"must be >= 1"};
if(vErrors === null){
vErrors = [err253];
}
else {
vErrors.push(err253);
}
errors++;
}
}
else {
const err254 = {instancePath:instancePath+"/nutrients/stock_ratio",schemaPath:"#/properties/nutrients/properties/stock_ratio/type",keyword:"type",params:{type: "number"},message:"must be number"};
if(vErrors === null){
vErrors = [err254];
}
else {
vErrors.push(err254);
}
errors++;
}
}
}
else {
const err255 = {instancePath:instancePath+"/nutrients",schemaPath:"#/properties/nutrients/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err255];
}
else {
vErrors.push(err255);
}
errors++;
}
}
if(data.events !== undefined){
let data104 = data.events;
if(Array.isArray(data104)){
const len7 = data104.length;
for(let i7=0; i7<len7; i7++){
let data105 = data104[i7];
if(data105 && typeof data105 == "object" && !Array.isArray(data105)){
if(data105.date === undefined){
const err256 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/required",keyword:"required",params:{missingProperty: "date"},message:"must have required property '"+"date"+"'"};
if(vErrors === null){
vErrors = [err256];
}
else {
vErrors.push(err256);
}
errors++;
}
if(data105.what === undefined){
const err257 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/required",keyword:"required",params:{missingProperty: "what"},message:"must have required property '"+"what"+"'"};
if(vErrors === null){
vErrors = [err257];
}
else {
vErrors.push(err257);
}
errors++;
}
for(const key21 in data105){
if(!(((key21 === "date") || (key21 === "where")) || (key21 === "what"))){
const err258 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key21},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err258];
}
else {
vErrors.push(err258);
}
errors++;
}
}
if(data105.date !== undefined){
if(!(validate53(data105.date, {instancePath:instancePath+"/events/" + i7+"/date",parentData:data105,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data105.where !== undefined){
let data107 = data105.where;
if(typeof data107 === "string"){
if(func2(data107) > 100){
const err259 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err259];
}
else {
vErrors.push(err259);
}
errors++;
}
if(func2(data107) < 1){
const err260 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err260];
}
else {
vErrors.push(err260);
}
errors++;
}
}
else {
const err261 = {instancePath:instancePath+"/events/" + i7+"/where",schemaPath:"#/properties/events/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err261];
}
else {
vErrors.push(err261);
}
errors++;
}
}
if(data105.what !== undefined){
let data108 = data105.what;
if(typeof data108 === "string"){
if(func2(data108) > 1000){
const err262 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err262];
}
else {
vErrors.push(err262);
}
errors++;
}
if(func2(data108) < 1){
const err263 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err263];
}
else {
vErrors.push(err263);
}
errors++;
}
}
else {
const err264 = {instancePath:instancePath+"/events/" + i7+"/what",schemaPath:"#/properties/events/items/properties/what/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err264];
}
else {
vErrors.push(err264);
}
errors++;
}
}
}
else {
const err265 = {instancePath:instancePath+"/events/" + i7,schemaPath:"#/properties/events/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err265];
}
else {
vErrors.push(err265);
}
errors++;
}
}
}
else {
const err266 = {instancePath:instancePath+"/events",schemaPath:"#/properties/events/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err266];
}
else {
vErrors.push(err266);
}
errors++;
}
}
if(data.photos !== undefined){
let data109 = data.photos;
if(Array.isArray(data109)){
const len8 = data109.length;
for(let i8=0; i8<len8; i8++){
let data110 = data109[i8];
if(data110 && typeof data110 == "object" && !Array.isArray(data110)){
if(data110.file === undefined){
const err267 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/required",keyword:"required",params:{missingProperty: "file"},message:"must have required property '"+"file"+"'"};
if(vErrors === null){
vErrors = [err267];
}
else {
vErrors.push(err267);
}
errors++;
}
if(data110.alt === undefined){
const err268 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/required",keyword:"required",params:{missingProperty: "alt"},message:"must have required property '"+"alt"+"'"};
if(vErrors === null){
vErrors = [err268];
}
else {
vErrors.push(err268);
}
errors++;
}
for(const key22 in data110){
if(!(((((key22 === "file") || (key22 === "date")) || (key22 === "where")) || (key22 === "caption")) || (key22 === "alt"))){
const err269 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key22},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err269];
}
else {
vErrors.push(err269);
}
errors++;
}
}
if(data110.file !== undefined){
let data111 = data110.file;
if(typeof data111 === "string"){
if(func2(data111) > 200){
const err270 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err270];
}
else {
vErrors.push(err270);
}
errors++;
}
if(func2(data111) < 1){
const err271 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err271];
}
else {
vErrors.push(err271);
}
errors++;
}
}
else {
const err272 = {instancePath:instancePath+"/photos/" + i8+"/file",schemaPath:"#/properties/photos/items/properties/file/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err272];
}
else {
vErrors.push(err272);
}
errors++;
}
}
if(data110.date !== undefined){
if(!(validate53(data110.date, {instancePath:instancePath+"/photos/" + i8+"/date",parentData:data110,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data110.where !== undefined){
let data113 = data110.where;
if(typeof data113 === "string"){
if(func2(data113) > 100){
const err273 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err273];
}
else {
vErrors.push(err273);
}
errors++;
}
if(func2(data113) < 1){
const err274 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err274];
}
else {
vErrors.push(err274);
}
errors++;
}
}
else {
const err275 = {instancePath:instancePath+"/photos/" + i8+"/where",schemaPath:"#/properties/photos/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err275];
}
else {
vErrors.push(err275);
}
errors++;
}
}
if(data110.caption !== undefined){
let data114 = data110.caption;
if(typeof data114 === "string"){
if(func2(data114) > 500){
const err276 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err276];
}
else {
vErrors.push(err276);
}
errors++;
}
if(func2(data114) < 1){
const err277 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err277];
}
else {
vErrors.push(err277);
}
errors++;
}
}
else {
const err278 = {instancePath:instancePath+"/photos/" + i8+"/caption",schemaPath:"#/properties/photos/items/properties/caption/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err278];
}
else {
vErrors.push(err278);
}
errors++;
}
}
if(data110.alt !== undefined){
let data115 = data110.alt;
if(typeof data115 === "string"){
if(func2(data115) > 500){
const err279 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err279];
}
else {
vErrors.push(err279);
}
errors++;
}
if(func2(data115) < 1){
const err280 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err280];
}
else {
vErrors.push(err280);
}
errors++;
}
}
else {
const err281 = {instancePath:instancePath+"/photos/" + i8+"/alt",schemaPath:"#/properties/photos/items/properties/alt/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err281];
}
else {
vErrors.push(err281);
}
errors++;
}
}
}
else {
const err282 = {instancePath:instancePath+"/photos/" + i8,schemaPath:"#/properties/photos/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err282];
}
else {
vErrors.push(err282);
}
errors++;
}
}
}
else {
const err283 = {instancePath:instancePath+"/photos",schemaPath:"#/properties/photos/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err283];
}
else {
vErrors.push(err283);
}
errors++;
}
}
if(data.related !== undefined){
let data116 = data.related;
if(Array.isArray(data116)){
const len9 = data116.length;
for(let i9=0; i9<len9; i9++){
let data117 = data116[i9];
if(data117 && typeof data117 == "object" && !Array.isArray(data117)){
if(data117.kind === undefined){
const err284 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/required",keyword:"required",params:{missingProperty: "kind"},message:"must have required property '"+"kind"+"'"};
if(vErrors === null){
vErrors = [err284];
}
else {
vErrors.push(err284);
}
errors++;
}
if(data117.value === undefined){
const err285 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/required",keyword:"required",params:{missingProperty: "value"},message:"must have required property '"+"value"+"'"};
if(vErrors === null){
vErrors = [err285];
}
else {
vErrors.push(err285);
}
errors++;
}
for(const key23 in data117){
if(!((((key23 === "kind") || (key23 === "value")) || (key23 === "of")) || (key23 === "note"))){
const err286 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key23},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err286];
}
else {
vErrors.push(err286);
}
errors++;
}
}
if(data117.kind !== undefined){
let data118 = data117.kind;
if(!(((data118 === "doi") || (data118 === "orcid")) || (data118 === "url"))){
const err287 = {instancePath:instancePath+"/related/" + i9+"/kind",schemaPath:"#/properties/related/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.related.items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err287];
}
else {
vErrors.push(err287);
}
errors++;
}
}
if(data117.value !== undefined){
let data119 = data117.value;
if(typeof data119 === "string"){
if(func2(data119) > 500){
const err288 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/maxLength",keyword:"maxLength",params:{limit: 500},message:"must NOT have more than 500 characters"};
if(vErrors === null){
vErrors = [err288];
}
else {
vErrors.push(err288);
}
errors++;
}
if(func2(data119) < 1){
const err289 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
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
const err290 = {instancePath:instancePath+"/related/" + i9+"/value",schemaPath:"#/properties/related/items/properties/value/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err290];
}
else {
vErrors.push(err290);
}
errors++;
}
}
if(data117.of !== undefined){
if(!(data117.of === "this")){
const err291 = {instancePath:instancePath+"/related/" + i9+"/of",schemaPath:"#/properties/related/items/properties/of/enum",keyword:"enum",params:{allowedValues: schema19.properties.related.items.properties.of.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err291];
}
else {
vErrors.push(err291);
}
errors++;
}
}
if(data117.note !== undefined){
let data121 = data117.note;
if(typeof data121 === "string"){
if(func2(data121) > 300){
const err292 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 300},message:"must NOT have more than 300 characters"};
if(vErrors === null){
vErrors = [err292];
}
else {
vErrors.push(err292);
}
errors++;
}
if(func2(data121) < 1){
const err293 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err293];
}
else {
vErrors.push(err293);
}
errors++;
}
}
else {
const err294 = {instancePath:instancePath+"/related/" + i9+"/note",schemaPath:"#/properties/related/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err294];
}
else {
vErrors.push(err294);
}
errors++;
}
}
}
else {
const err295 = {instancePath:instancePath+"/related/" + i9,schemaPath:"#/properties/related/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err295];
}
else {
vErrors.push(err295);
}
errors++;
}
}
}
else {
const err296 = {instancePath:instancePath+"/related",schemaPath:"#/properties/related/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err296];
}
else {
vErrors.push(err296);
}
errors++;
}
}
if(data.accepted !== undefined){
let data122 = data.accepted;
if(Array.isArray(data122)){
const len10 = data122.length;
for(let i10=0; i10<len10; i10++){
let data123 = data122[i10];
if(data123 && typeof data123 == "object" && !Array.isArray(data123)){
if(data123.rule === undefined){
const err297 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/required",keyword:"required",params:{missingProperty: "rule"},message:"must have required property '"+"rule"+"'"};
if(vErrors === null){
vErrors = [err297];
}
else {
vErrors.push(err297);
}
errors++;
}
if(data123.reason === undefined){
const err298 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/required",keyword:"required",params:{missingProperty: "reason"},message:"must have required property '"+"reason"+"'"};
if(vErrors === null){
vErrors = [err298];
}
else {
vErrors.push(err298);
}
errors++;
}
for(const key24 in data123){
if(!(((key24 === "rule") || (key24 === "where")) || (key24 === "reason"))){
const err299 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key24},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err299];
}
else {
vErrors.push(err299);
}
errors++;
}
}
if(data123.rule !== undefined){
let data124 = data123.rule;
if(typeof data124 === "string"){
if(func2(data124) > 60){
const err300 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/maxLength",keyword:"maxLength",params:{limit: 60},message:"must NOT have more than 60 characters"};
if(vErrors === null){
vErrors = [err300];
}
else {
vErrors.push(err300);
}
errors++;
}
if(func2(data124) < 1){
const err301 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err301];
}
else {
vErrors.push(err301);
}
errors++;
}
}
else {
const err302 = {instancePath:instancePath+"/accepted/" + i10+"/rule",schemaPath:"#/properties/accepted/items/properties/rule/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err302];
}
else {
vErrors.push(err302);
}
errors++;
}
}
if(data123.where !== undefined){
let data125 = data123.where;
if(typeof data125 === "string"){
if(func2(data125) > 100){
const err303 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err303];
}
else {
vErrors.push(err303);
}
errors++;
}
if(func2(data125) < 1){
const err304 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err304];
}
else {
vErrors.push(err304);
}
errors++;
}
}
else {
const err305 = {instancePath:instancePath+"/accepted/" + i10+"/where",schemaPath:"#/properties/accepted/items/properties/where/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err305];
}
else {
vErrors.push(err305);
}
errors++;
}
}
if(data123.reason !== undefined){
let data126 = data123.reason;
if(typeof data126 === "string"){
if(func2(data126) > 1000){
const err306 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err306];
}
else {
vErrors.push(err306);
}
errors++;
}
if(func2(data126) < 3){
const err307 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/minLength",keyword:"minLength",params:{limit: 3},message:"must NOT have fewer than 3 characters"};
if(vErrors === null){
vErrors = [err307];
}
else {
vErrors.push(err307);
}
errors++;
}
}
else {
const err308 = {instancePath:instancePath+"/accepted/" + i10+"/reason",schemaPath:"#/properties/accepted/items/properties/reason/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err308];
}
else {
vErrors.push(err308);
}
errors++;
}
}
}
else {
const err309 = {instancePath:instancePath+"/accepted/" + i10,schemaPath:"#/properties/accepted/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err309];
}
else {
vErrors.push(err309);
}
errors++;
}
}
}
else {
const err310 = {instancePath:instancePath+"/accepted",schemaPath:"#/properties/accepted/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err310];
}
else {
vErrors.push(err310);
}
errors++;
}
}
if(data.releases !== undefined){
let data127 = data.releases;
if(Array.isArray(data127)){
if(data127.length < 1){
const err311 = {instancePath:instancePath+"/releases",schemaPath:"#/properties/releases/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err311];
}
else {
vErrors.push(err311);
}
errors++;
}
const len11 = data127.length;
for(let i11=0; i11<len11; i11++){
let data128 = data127[i11];
if(data128 && typeof data128 == "object" && !Array.isArray(data128)){
if(data128.version === undefined){
const err312 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/required",keyword:"required",params:{missingProperty: "version"},message:"must have required property '"+"version"+"'"};
if(vErrors === null){
vErrors = [err312];
}
else {
vErrors.push(err312);
}
errors++;
}
if(data128.date === undefined){
const err313 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/required",keyword:"required",params:{missingProperty: "date"},message:"must have required property '"+"date"+"'"};
if(vErrors === null){
vErrors = [err313];
}
else {
vErrors.push(err313);
}
errors++;
}
for(const key25 in data128){
if(!(((key25 === "version") || (key25 === "date")) || (key25 === "note"))){
const err314 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key25},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err314];
}
else {
vErrors.push(err314);
}
errors++;
}
}
if(data128.version !== undefined){
let data129 = data128.version;
if(typeof data129 === "string"){
if(!pattern3.test(data129)){
const err315 = {instancePath:instancePath+"/releases/" + i11+"/version",schemaPath:"#/properties/releases/items/properties/version/pattern",keyword:"pattern",params:{pattern: "^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"},message:"must match pattern \""+"^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$"+"\""};
if(vErrors === null){
vErrors = [err315];
}
else {
vErrors.push(err315);
}
errors++;
}
}
else {
const err316 = {instancePath:instancePath+"/releases/" + i11+"/version",schemaPath:"#/properties/releases/items/properties/version/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err316];
}
else {
vErrors.push(err316);
}
errors++;
}
}
if(data128.date !== undefined){
if(!(validate53(data128.date, {instancePath:instancePath+"/releases/" + i11+"/date",parentData:data128,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data128.note !== undefined){
let data131 = data128.note;
if(typeof data131 === "string"){
if(func2(data131) > 1000){
const err317 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/maxLength",keyword:"maxLength",params:{limit: 1000},message:"must NOT have more than 1000 characters"};
if(vErrors === null){
vErrors = [err317];
}
else {
vErrors.push(err317);
}
errors++;
}
if(func2(data131) < 1){
const err318 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err318];
}
else {
vErrors.push(err318);
}
errors++;
}
}
else {
const err319 = {instancePath:instancePath+"/releases/" + i11+"/note",schemaPath:"#/properties/releases/items/properties/note/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err319];
}
else {
vErrors.push(err319);
}
errors++;
}
}
}
else {
const err320 = {instancePath:instancePath+"/releases/" + i11,schemaPath:"#/properties/releases/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err320];
}
else {
vErrors.push(err320);
}
errors++;
}
}
}
else {
const err321 = {instancePath:instancePath+"/releases",schemaPath:"#/properties/releases/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err321];
}
else {
vErrors.push(err321);
}
errors++;
}
}
if(data.sources !== undefined){
let data132 = data.sources;
if(Array.isArray(data132)){
if(data132.length > 200){
const err322 = {instancePath:instancePath+"/sources",schemaPath:"#/properties/sources/maxItems",keyword:"maxItems",params:{limit: 200},message:"must NOT have more than 200 items"};
if(vErrors === null){
vErrors = [err322];
}
else {
vErrors.push(err322);
}
errors++;
}
const len12 = data132.length;
for(let i12=0; i12<len12; i12++){
let data133 = data132[i12];
if(data133 && typeof data133 == "object" && !Array.isArray(data133)){
if(data133.file === undefined){
const err323 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/required",keyword:"required",params:{missingProperty: "file"},message:"must have required property '"+"file"+"'"};
if(vErrors === null){
vErrors = [err323];
}
else {
vErrors.push(err323);
}
errors++;
}
if(data133.sha256 === undefined){
const err324 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/required",keyword:"required",params:{missingProperty: "sha256"},message:"must have required property '"+"sha256"+"'"};
if(vErrors === null){
vErrors = [err324];
}
else {
vErrors.push(err324);
}
errors++;
}
if(data133.headings === undefined){
const err325 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/required",keyword:"required",params:{missingProperty: "headings"},message:"must have required property '"+"headings"+"'"};
if(vErrors === null){
vErrors = [err325];
}
else {
vErrors.push(err325);
}
errors++;
}
if(data133.rows === undefined){
const err326 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/required",keyword:"required",params:{missingProperty: "rows"},message:"must have required property '"+"rows"+"'"};
if(vErrors === null){
vErrors = [err326];
}
else {
vErrors.push(err326);
}
errors++;
}
if(data133.columns === undefined){
const err327 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/required",keyword:"required",params:{missingProperty: "columns"},message:"must have required property '"+"columns"+"'"};
if(vErrors === null){
vErrors = [err327];
}
else {
vErrors.push(err327);
}
errors++;
}
for(const key26 in data133){
if(!(func1.call(schema19.properties.sources.items.properties, key26))){
const err328 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key26},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err328];
}
else {
vErrors.push(err328);
}
errors++;
}
}
if(data133.file !== undefined){
let data134 = data133.file;
if(typeof data134 === "string"){
if(func2(data134) > 200){
const err329 = {instancePath:instancePath+"/sources/" + i12+"/file",schemaPath:"#/properties/sources/items/properties/file/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err329];
}
else {
vErrors.push(err329);
}
errors++;
}
if(!pattern14.test(data134)){
const err330 = {instancePath:instancePath+"/sources/" + i12+"/file",schemaPath:"#/properties/sources/items/properties/file/pattern",keyword:"pattern",params:{pattern: "^source/[^/\\\\]+$"},message:"must match pattern \""+"^source/[^/\\\\]+$"+"\""};
if(vErrors === null){
vErrors = [err330];
}
else {
vErrors.push(err330);
}
errors++;
}
}
else {
const err331 = {instancePath:instancePath+"/sources/" + i12+"/file",schemaPath:"#/properties/sources/items/properties/file/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err331];
}
else {
vErrors.push(err331);
}
errors++;
}
}
if(data133.sha256 !== undefined){
let data135 = data133.sha256;
if(typeof data135 === "string"){
if(!pattern15.test(data135)){
const err332 = {instancePath:instancePath+"/sources/" + i12+"/sha256",schemaPath:"#/properties/sources/items/properties/sha256/pattern",keyword:"pattern",params:{pattern: "^[0-9a-f]{64}$"},message:"must match pattern \""+"^[0-9a-f]{64}$"+"\""};
if(vErrors === null){
vErrors = [err332];
}
else {
vErrors.push(err332);
}
errors++;
}
}
else {
const err333 = {instancePath:instancePath+"/sources/" + i12+"/sha256",schemaPath:"#/properties/sources/items/properties/sha256/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err333];
}
else {
vErrors.push(err333);
}
errors++;
}
}
if(data133.sheet !== undefined){
let data136 = data133.sheet;
if(typeof data136 === "string"){
if(func2(data136) > 100){
const err334 = {instancePath:instancePath+"/sources/" + i12+"/sheet",schemaPath:"#/properties/sources/items/properties/sheet/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err334];
}
else {
vErrors.push(err334);
}
errors++;
}
if(func2(data136) < 1){
const err335 = {instancePath:instancePath+"/sources/" + i12+"/sheet",schemaPath:"#/properties/sources/items/properties/sheet/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err335];
}
else {
vErrors.push(err335);
}
errors++;
}
}
else {
const err336 = {instancePath:instancePath+"/sources/" + i12+"/sheet",schemaPath:"#/properties/sources/items/properties/sheet/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err336];
}
else {
vErrors.push(err336);
}
errors++;
}
}
if(data133.turned !== undefined){
if(typeof data133.turned !== "boolean"){
const err337 = {instancePath:instancePath+"/sources/" + i12+"/turned",schemaPath:"#/properties/sources/items/properties/turned/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err337];
}
else {
vErrors.push(err337);
}
errors++;
}
}
if(data133.headings !== undefined){
let data138 = data133.headings;
if(typeof data138 === "string"){
if(!pattern16.test(data138)){
const err338 = {instancePath:instancePath+"/sources/" + i12+"/headings",schemaPath:"#/properties/sources/items/properties/headings/pattern",keyword:"pattern",params:{pattern: "^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$"},message:"must match pattern \""+"^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$"+"\""};
if(vErrors === null){
vErrors = [err338];
}
else {
vErrors.push(err338);
}
errors++;
}
}
else {
const err339 = {instancePath:instancePath+"/sources/" + i12+"/headings",schemaPath:"#/properties/sources/items/properties/headings/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err339];
}
else {
vErrors.push(err339);
}
errors++;
}
}
if(data133.rows !== undefined){
let data139 = data133.rows;
if(typeof data139 === "string"){
if(!pattern16.test(data139)){
const err340 = {instancePath:instancePath+"/sources/" + i12+"/rows",schemaPath:"#/properties/sources/items/properties/rows/pattern",keyword:"pattern",params:{pattern: "^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$"},message:"must match pattern \""+"^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$"+"\""};
if(vErrors === null){
vErrors = [err340];
}
else {
vErrors.push(err340);
}
errors++;
}
}
else {
const err341 = {instancePath:instancePath+"/sources/" + i12+"/rows",schemaPath:"#/properties/sources/items/properties/rows/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err341];
}
else {
vErrors.push(err341);
}
errors++;
}
}
if(data133.left_out !== undefined){
let data140 = data133.left_out;
if(Array.isArray(data140)){
if(data140.length > 10000){
const err342 = {instancePath:instancePath+"/sources/" + i12+"/left_out",schemaPath:"#/properties/sources/items/properties/left_out/maxItems",keyword:"maxItems",params:{limit: 10000},message:"must NOT have more than 10000 items"};
if(vErrors === null){
vErrors = [err342];
}
else {
vErrors.push(err342);
}
errors++;
}
const len13 = data140.length;
for(let i13=0; i13<len13; i13++){
let data141 = data140[i13];
if(typeof data141 === "string"){
if(!pattern18.test(data141)){
const err343 = {instancePath:instancePath+"/sources/" + i12+"/left_out/" + i13,schemaPath:"#/properties/sources/items/properties/left_out/items/pattern",keyword:"pattern",params:{pattern: "^(?:[1-9][0-9]*|[A-Z]{1,3})$"},message:"must match pattern \""+"^(?:[1-9][0-9]*|[A-Z]{1,3})$"+"\""};
if(vErrors === null){
vErrors = [err343];
}
else {
vErrors.push(err343);
}
errors++;
}
}
else {
const err344 = {instancePath:instancePath+"/sources/" + i12+"/left_out/" + i13,schemaPath:"#/properties/sources/items/properties/left_out/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err344];
}
else {
vErrors.push(err344);
}
errors++;
}
}
}
else {
const err345 = {instancePath:instancePath+"/sources/" + i12+"/left_out",schemaPath:"#/properties/sources/items/properties/left_out/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err345];
}
else {
vErrors.push(err345);
}
errors++;
}
}
if(data133.columns !== undefined){
let data142 = data133.columns;
if(data142 && typeof data142 == "object" && !Array.isArray(data142)){
if(Object.keys(data142).length > 2000){
const err346 = {instancePath:instancePath+"/sources/" + i12+"/columns",schemaPath:"#/properties/sources/items/properties/columns/maxProperties",keyword:"maxProperties",params:{limit: 2000},message:"must NOT have more than 2000 properties"};
if(vErrors === null){
vErrors = [err346];
}
else {
vErrors.push(err346);
}
errors++;
}
if(Object.keys(data142).length < 1){
const err347 = {instancePath:instancePath+"/sources/" + i12+"/columns",schemaPath:"#/properties/sources/items/properties/columns/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err347];
}
else {
vErrors.push(err347);
}
errors++;
}
for(const key27 in data142){
const _errs290 = errors;
if(typeof key27 === "string"){
if(!pattern18.test(key27)){
const err348 = {instancePath:instancePath+"/sources/" + i12+"/columns",schemaPath:"#/properties/sources/items/properties/columns/propertyNames/pattern",keyword:"pattern",params:{pattern: "^(?:[1-9][0-9]*|[A-Z]{1,3})$"},message:"must match pattern \""+"^(?:[1-9][0-9]*|[A-Z]{1,3})$"+"\"",propertyName:key27};
if(vErrors === null){
vErrors = [err348];
}
else {
vErrors.push(err348);
}
errors++;
}
}
var valid59 = _errs290 === errors;
if(!valid59){
const err349 = {instancePath:instancePath+"/sources/" + i12+"/columns",schemaPath:"#/properties/sources/items/properties/columns/propertyNames",keyword:"propertyNames",params:{propertyName: key27},message:"property name must be valid"};
if(vErrors === null){
vErrors = [err349];
}
else {
vErrors.push(err349);
}
errors++;
}
}
for(const key28 in data142){
let data143 = data142[key28];
if(typeof data143 === "string"){
if(func2(data143) > 200){
const err350 = {instancePath:instancePath+"/sources/" + i12+"/columns/" + key28.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/columns/additionalProperties/maxLength",keyword:"maxLength",params:{limit: 200},message:"must NOT have more than 200 characters"};
if(vErrors === null){
vErrors = [err350];
}
else {
vErrors.push(err350);
}
errors++;
}
if(func2(data143) < 1){
const err351 = {instancePath:instancePath+"/sources/" + i12+"/columns/" + key28.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/columns/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err351];
}
else {
vErrors.push(err351);
}
errors++;
}
}
else {
const err352 = {instancePath:instancePath+"/sources/" + i12+"/columns/" + key28.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/columns/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err352];
}
else {
vErrors.push(err352);
}
errors++;
}
}
}
else {
const err353 = {instancePath:instancePath+"/sources/" + i12+"/columns",schemaPath:"#/properties/sources/items/properties/columns/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err353];
}
else {
vErrors.push(err353);
}
errors++;
}
}
if(data133.always !== undefined){
let data144 = data133.always;
if(data144 && typeof data144 == "object" && !Array.isArray(data144)){
for(const key29 in data144){
if(!((((((key29 === "container") || (key29 === "row")) || (key29 === "column")) || (key29 === "plant")) || (key29 === "cut")) || (key29 === "date"))){
const err354 = {instancePath:instancePath+"/sources/" + i12+"/always",schemaPath:"#/properties/sources/items/properties/always/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key29},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err354];
}
else {
vErrors.push(err354);
}
errors++;
}
}
if(data144.container !== undefined){
let data145 = data144.container;
if(typeof data145 === "string"){
if(func2(data145) > 32){
const err355 = {instancePath:instancePath+"/sources/" + i12+"/always/container",schemaPath:"#/properties/sources/items/properties/always/properties/container/maxLength",keyword:"maxLength",params:{limit: 32},message:"must NOT have more than 32 characters"};
if(vErrors === null){
vErrors = [err355];
}
else {
vErrors.push(err355);
}
errors++;
}
if(func2(data145) < 1){
const err356 = {instancePath:instancePath+"/sources/" + i12+"/always/container",schemaPath:"#/properties/sources/items/properties/always/properties/container/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err356];
}
else {
vErrors.push(err356);
}
errors++;
}
}
else {
const err357 = {instancePath:instancePath+"/sources/" + i12+"/always/container",schemaPath:"#/properties/sources/items/properties/always/properties/container/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err357];
}
else {
vErrors.push(err357);
}
errors++;
}
}
if(data144.row !== undefined){
let data146 = data144.row;
if(typeof data146 === "string"){
if(!pattern20.test(data146)){
const err358 = {instancePath:instancePath+"/sources/" + i12+"/always/row",schemaPath:"#/properties/sources/items/properties/always/properties/row/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"},message:"must match pattern \""+"^[1-9][0-9]*$"+"\""};
if(vErrors === null){
vErrors = [err358];
}
else {
vErrors.push(err358);
}
errors++;
}
}
else {
const err359 = {instancePath:instancePath+"/sources/" + i12+"/always/row",schemaPath:"#/properties/sources/items/properties/always/properties/row/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err359];
}
else {
vErrors.push(err359);
}
errors++;
}
}
if(data144.column !== undefined){
let data147 = data144.column;
if(typeof data147 === "string"){
if(!pattern20.test(data147)){
const err360 = {instancePath:instancePath+"/sources/" + i12+"/always/column",schemaPath:"#/properties/sources/items/properties/always/properties/column/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"},message:"must match pattern \""+"^[1-9][0-9]*$"+"\""};
if(vErrors === null){
vErrors = [err360];
}
else {
vErrors.push(err360);
}
errors++;
}
}
else {
const err361 = {instancePath:instancePath+"/sources/" + i12+"/always/column",schemaPath:"#/properties/sources/items/properties/always/properties/column/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err361];
}
else {
vErrors.push(err361);
}
errors++;
}
}
if(data144.plant !== undefined){
let data148 = data144.plant;
if(typeof data148 === "string"){
if(!pattern20.test(data148)){
const err362 = {instancePath:instancePath+"/sources/" + i12+"/always/plant",schemaPath:"#/properties/sources/items/properties/always/properties/plant/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"},message:"must match pattern \""+"^[1-9][0-9]*$"+"\""};
if(vErrors === null){
vErrors = [err362];
}
else {
vErrors.push(err362);
}
errors++;
}
}
else {
const err363 = {instancePath:instancePath+"/sources/" + i12+"/always/plant",schemaPath:"#/properties/sources/items/properties/always/properties/plant/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err363];
}
else {
vErrors.push(err363);
}
errors++;
}
}
if(data144.cut !== undefined){
let data149 = data144.cut;
if(typeof data149 === "string"){
if(!pattern20.test(data149)){
const err364 = {instancePath:instancePath+"/sources/" + i12+"/always/cut",schemaPath:"#/properties/sources/items/properties/always/properties/cut/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"},message:"must match pattern \""+"^[1-9][0-9]*$"+"\""};
if(vErrors === null){
vErrors = [err364];
}
else {
vErrors.push(err364);
}
errors++;
}
}
else {
const err365 = {instancePath:instancePath+"/sources/" + i12+"/always/cut",schemaPath:"#/properties/sources/items/properties/always/properties/cut/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err365];
}
else {
vErrors.push(err365);
}
errors++;
}
}
if(data144.date !== undefined){
if(!(validate53(data144.date, {instancePath:instancePath+"/sources/" + i12+"/always/date",parentData:data144,parentDataProperty:"date",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
}
else {
const err366 = {instancePath:instancePath+"/sources/" + i12+"/always",schemaPath:"#/properties/sources/items/properties/always/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err366];
}
else {
vErrors.push(err366);
}
errors++;
}
}
if(data133.titles !== undefined){
if(typeof data133.titles !== "boolean"){
const err367 = {instancePath:instancePath+"/sources/" + i12+"/titles",schemaPath:"#/properties/sources/items/properties/titles/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"};
if(vErrors === null){
vErrors = [err367];
}
else {
vErrors.push(err367);
}
errors++;
}
}
if(data133.words !== undefined){
let data152 = data133.words;
if(data152 && typeof data152 == "object" && !Array.isArray(data152)){
if(Object.keys(data152).length > 200){
const err368 = {instancePath:instancePath+"/sources/" + i12+"/words",schemaPath:"#/properties/sources/items/properties/words/maxProperties",keyword:"maxProperties",params:{limit: 200},message:"must NOT have more than 200 properties"};
if(vErrors === null){
vErrors = [err368];
}
else {
vErrors.push(err368);
}
errors++;
}
for(const key30 in data152){
let data153 = data152[key30];
if(typeof data153 === "string"){
if(func2(data153) > 40){
const err369 = {instancePath:instancePath+"/sources/" + i12+"/words/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/words/additionalProperties/maxLength",keyword:"maxLength",params:{limit: 40},message:"must NOT have more than 40 characters"};
if(vErrors === null){
vErrors = [err369];
}
else {
vErrors.push(err369);
}
errors++;
}
if(func2(data153) < 1){
const err370 = {instancePath:instancePath+"/sources/" + i12+"/words/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/words/additionalProperties/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err370];
}
else {
vErrors.push(err370);
}
errors++;
}
}
else {
const err371 = {instancePath:instancePath+"/sources/" + i12+"/words/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sources/items/properties/words/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err371];
}
else {
vErrors.push(err371);
}
errors++;
}
}
}
else {
const err372 = {instancePath:instancePath+"/sources/" + i12+"/words",schemaPath:"#/properties/sources/items/properties/words/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err372];
}
else {
vErrors.push(err372);
}
errors++;
}
}
if(data133.decimal !== undefined){
let data154 = data133.decimal;
if(!((data154 === ".") || (data154 === ","))){
const err373 = {instancePath:instancePath+"/sources/" + i12+"/decimal",schemaPath:"#/properties/sources/items/properties/decimal/enum",keyword:"enum",params:{allowedValues: schema19.properties.sources.items.properties.decimal.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err373];
}
else {
vErrors.push(err373);
}
errors++;
}
}
if(data133.dates !== undefined){
let data155 = data133.dates;
if(!((data155 === "day first") || (data155 === "month first"))){
const err374 = {instancePath:instancePath+"/sources/" + i12+"/dates",schemaPath:"#/properties/sources/items/properties/dates/enum",keyword:"enum",params:{allowedValues: schema19.properties.sources.items.properties.dates.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err374];
}
else {
vErrors.push(err374);
}
errors++;
}
}
}
else {
const err375 = {instancePath:instancePath+"/sources/" + i12,schemaPath:"#/properties/sources/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err375];
}
else {
vErrors.push(err375);
}
errors++;
}
}
}
else {
const err376 = {instancePath:instancePath+"/sources",schemaPath:"#/properties/sources/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err376];
}
else {
vErrors.push(err376);
}
errors++;
}
}
if(data.harvest !== undefined){
let data156 = data.harvest;
if(data156 && typeof data156 == "object" && !Array.isArray(data156)){
for(const key31 in data156){
if(!(((key31 === "columns") || (key31 === "delimiter")) || (key31 === "decimal"))){
const err377 = {instancePath:instancePath+"/harvest",schemaPath:"#/properties/harvest/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key31},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err377];
}
else {
vErrors.push(err377);
}
errors++;
}
}
if(data156.columns !== undefined){
let data157 = data156.columns;
if(data157 && typeof data157 == "object" && !Array.isArray(data157)){
for(const key32 in data157){
let data158 = data157[key32];
if(data158 && typeof data158 == "object" && !Array.isArray(data158)){
if(data158.column === undefined){
const err378 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/required",keyword:"required",params:{missingProperty: "column"},message:"must have required property '"+"column"+"'"};
if(vErrors === null){
vErrors = [err378];
}
else {
vErrors.push(err378);
}
errors++;
}
for(const key33 in data158){
if(!((key33 === "column") || (key33 === "unit"))){
const err379 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key33},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err379];
}
else {
vErrors.push(err379);
}
errors++;
}
}
if(data158.column !== undefined){
let data159 = data158.column;
if(typeof data159 === "string"){
if(func2(data159) > 100){
const err380 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/maxLength",keyword:"maxLength",params:{limit: 100},message:"must NOT have more than 100 characters"};
if(vErrors === null){
vErrors = [err380];
}
else {
vErrors.push(err380);
}
errors++;
}
if(func2(data159) < 1){
const err381 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err381];
}
else {
vErrors.push(err381);
}
errors++;
}
}
else {
const err382 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/column",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/column/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err382];
}
else {
vErrors.push(err382);
}
errors++;
}
}
if(data158.unit !== undefined){
let data160 = data158.unit;
if(typeof data160 === "string"){
if(func2(data160) > 40){
const err383 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/maxLength",keyword:"maxLength",params:{limit: 40},message:"must NOT have more than 40 characters"};
if(vErrors === null){
vErrors = [err383];
}
else {
vErrors.push(err383);
}
errors++;
}
if(func2(data160) < 1){
const err384 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/minLength",keyword:"minLength",params:{limit: 1},message:"must NOT have fewer than 1 characters"};
if(vErrors === null){
vErrors = [err384];
}
else {
vErrors.push(err384);
}
errors++;
}
}
else {
const err385 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1")+"/unit",schemaPath:"#/properties/harvest/properties/columns/additionalProperties/properties/unit/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err385];
}
else {
vErrors.push(err385);
}
errors++;
}
}
}
else {
const err386 = {instancePath:instancePath+"/harvest/columns/" + key32.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/harvest/properties/columns/additionalProperties/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err386];
}
else {
vErrors.push(err386);
}
errors++;
}
}
}
else {
const err387 = {instancePath:instancePath+"/harvest/columns",schemaPath:"#/properties/harvest/properties/columns/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err387];
}
else {
vErrors.push(err387);
}
errors++;
}
}
if(data156.delimiter !== undefined){
let data161 = data156.delimiter;
if(!((((data161 === ",") || (data161 === ";")) || (data161 === "\t")) || (data161 === "|"))){
const err388 = {instancePath:instancePath+"/harvest/delimiter",schemaPath:"#/properties/harvest/properties/delimiter/enum",keyword:"enum",params:{allowedValues: schema19.properties.harvest.properties.delimiter.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err388];
}
else {
vErrors.push(err388);
}
errors++;
}
}
if(data156.decimal !== undefined){
let data162 = data156.decimal;
if(!((data162 === ".") || (data162 === ","))){
const err389 = {instancePath:instancePath+"/harvest/decimal",schemaPath:"#/properties/harvest/properties/decimal/enum",keyword:"enum",params:{allowedValues: schema19.properties.harvest.properties.decimal.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err389];
}
else {
vErrors.push(err389);
}
errors++;
}
}
}
else {
const err390 = {instancePath:instancePath+"/harvest",schemaPath:"#/properties/harvest/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err390];
}
else {
vErrors.push(err390);
}
errors++;
}
}
}
else {
const err391 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err391];
}
else {
vErrors.push(err391);
}
errors++;
}
validate52.errors = vErrors;
return errors === 0;
}
validate52.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const site = validate70;
const schema24 = siteSchema;
const formats2 = formats.uri;
const pattern24 = new RegExp("^https?://", "u");
const pattern25 = new RegExp("^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$", "u");

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
if(!pattern24.test(data2)){
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
if(!pattern25.test(data5)){
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
if(!pattern24.test(data10)){
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
validate70.errors = vErrors;
return errors === 0;
}
validate70.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const cultivars = validate71;
const schema25 = cultivarsSchema;
const pattern27 = new RegExp("^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$", "u");

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
if(!pattern27.test(data1)){
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
validate71.errors = vErrors;
return errors === 0;
}
validate71.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

export const sheet = validate72;
const schema26 = sheetSchema;

function validate72(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate72.evaluated;
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
if(!pattern27.test(data3)){
const err13 = {instancePath:instancePath+"/trials/" + i0,schemaPath:"#/properties/trials/items/pattern",keyword:"pattern",params:{pattern: "^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$"},message:"must match pattern \""+"^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$"+"\""};
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
validate72.errors = vErrors;
return errors === 0;
}
validate72.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};
