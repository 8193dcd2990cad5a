// Recomputes this release: node verify.mjs. Made from the program that published it; needs Node 20 or newer and nothing else.
import { createRequire } from 'node:module';
const require = createRequire(import.meta.url);
var mb=Object.create;var Va=Object.defineProperty;var db=Object.getOwnPropertyDescriptor;var pb=Object.getOwnPropertyNames;var vb=Object.getPrototypeOf,gb=Object.prototype.hasOwnProperty;var hn=(e=>typeof require<"u"?require:typeof Proxy<"u"?new Proxy(e,{get:(r,t)=>(typeof require<"u"?require:r)[t]}):e)(function(e){if(typeof require<"u")return require.apply(this,arguments);throw Error('Dynamic require of "'+e+'" is not supported')});var m=(e,r)=>()=>{try{return r||e((r={exports:{}}).exports,r),r.exports}catch(t){throw r=0,t}};var hb=(e,r,t,n)=>{if(r&&typeof r=="object"||typeof r=="function")for(let i of pb(r))!gb.call(e,i)&&i!==t&&Va(e,i,{get:()=>r[i],enumerable:!(n=db(r,i))||n.enumerable});return e};var et=(e,r,t)=>(t=e!=null?mb(vb(e)):{},hb(r||!e||!e.__esModule?Va(t,"default",{value:e,enumerable:!0}):t,e));var hs=m((OG,gs)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sq=typeof Object.defineProperty=="function"?Object.defineProperty:null;gs.exports=Sq});var bs=m((AG,ys)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nq=hs();function Oq(){try{return Nq({},"x",{}),!0}catch{return!1}}ys.exports=Oq});var ws=m((EG,qs)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Aq=Object.defineProperty;qs.exports=Aq});var r0=m((IG,Ss)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Eq(e){return typeof e=="number"}Ss.exports=Eq});var t0=m((_G,Os)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Iq(e){return e[0]==="-"}function Ns(e){var r="",t;for(t=0;t<e;t++)r+="0";return r}function _q(e,r,t){var n=!1,i=r-e.length;return i<0||(Iq(e)&&(n=!0,e=e.substr(1)),e=t?e+Ns(i):Ns(i)+e,n&&(e="-"+e)),e}Os.exports=_q});var _s=m((FG,Is)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fq=r0(),As=t0(),Rq=String.prototype.toLowerCase,Es=String.prototype.toUpperCase;function Mq(e){var r,t,n;switch(e.specifier){case"b":r=2;break;case"o":r=8;break;case"x":case"X":r=16;break;default:r=10;break}if(t=e.arg,n=parseInt(t,10),!isFinite(n)){if(!Fq(t))throw new Error("invalid integer. Value: "+t);n=0}return n<0&&(e.specifier==="u"||r!==10)&&(n=4294967295+n+1),n<0?(t=(-n).toString(r),e.precision&&(t=As(t,e.precision,e.padRight)),t="-"+t):(t=n.toString(r),!n&&!e.precision?t="":e.precision&&(t=As(t,e.precision,e.padRight)),e.sign&&(t=e.sign+t)),r===16&&(e.alternate&&(t="0x"+t),t=e.specifier===Es.call(e.specifier)?Es.call(t):Rq.call(t)),r===8&&e.alternate&&t.charAt(0)!=="0"&&(t="0"+t),t}Is.exports=Mq});var Rs=m((RG,Fs)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Pq(e){return typeof e=="string"}Fs.exports=Pq});var Ts=m((MG,Ps)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Tq=Math.abs,Cq=String.prototype.toLowerCase,Ms=String.prototype.toUpperCase,Tr=String.prototype.replace,Dq=/e\+(\d)$/,Lq=/e-(\d)$/,kq=/^(\d+)$/,Uq=/^(\d+)e/,$q=/\.0$/,Bq=/\.0*e/,Hq=/(\..*[^0])0*e/;function jq(e,r){var t,n;switch(r.specifier){case"e":case"E":n=e.toExponential(r.precision);break;case"f":case"F":n=e.toFixed(r.precision);break;case"g":case"G":Tq(e)<1e-4?(t=r.precision,t>0&&(t-=1),n=e.toExponential(t)):n=e.toPrecision(r.precision),r.alternate||(n=Tr.call(n,Hq,"$1e"),n=Tr.call(n,Bq,"e"),n=Tr.call(n,$q,""));break;default:throw new Error("invalid double notation. Value: "+r.specifier)}return n=Tr.call(n,Dq,"e+0$1"),n=Tr.call(n,Lq,"e-0$1"),r.alternate&&(n=Tr.call(n,kq,"$1."),n=Tr.call(n,Uq,"$1.e")),e>=0&&r.sign&&(n=r.sign+n),n=r.specifier===Ms.call(r.specifier)?Ms.call(n):Cq.call(n),n}Ps.exports=jq});var Ls=m((PG,Ds)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Cs(e){var r="",t;for(t=0;t<e;t++)r+=" ";return r}function Wq(e,r,t){var n=r-e.length;return n<0||(e=t?e+Cs(n):Cs(n)+e),e}Ds.exports=Wq});var Us=m((TG,ks)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vq=_s(),Gq=Rs(),Xq=r0(),Qq=Ts(),Kq=Ls(),Zq=t0(),Jq=String.fromCharCode,Yq=Array.isArray;function In(e){return e!==e}function zq(e){var r={};return r.specifier=e.specifier,r.precision=e.precision===void 0?1:e.precision,r.width=e.width,r.flags=e.flags||"",r.mapping=e.mapping,r}function xq(e){var r,t,n,i,o,a,s,u,l,c;if(!Yq(e))throw new TypeError("invalid argument. First argument must be an array. Value: `"+e+"`.");for(a="",s=1,l=0;l<e.length;l++)if(n=e[l],Gq(n))a+=n;else{if(r=n.precision!==void 0,n=zq(n),!n.specifier)throw new TypeError("invalid argument. Token is missing `specifier` property. Index: `"+l+"`. Value: `"+n+"`.");for(n.mapping&&(s=n.mapping),t=n.flags,c=0;c<t.length;c++)switch(i=t.charAt(c),i){case" ":n.sign=" ";break;case"+":n.sign="+";break;case"-":n.padRight=!0,n.padZeros=!1;break;case"0":n.padZeros=t.indexOf("-")<0;break;case"#":n.alternate=!0;break;default:throw new Error("invalid flag: "+i)}if(n.width==="*"){if(n.width=parseInt(arguments[s],10),s+=1,In(n.width))throw new TypeError("the argument for * width at position "+s+" is not a number. Value: `"+n.width+"`.");n.width<0&&(n.padRight=!0,n.width=-n.width)}if(r&&n.precision==="*"){if(n.precision=parseInt(arguments[s],10),s+=1,In(n.precision))throw new TypeError("the argument for * precision at position "+s+" is not a number. Value: `"+n.precision+"`.");n.precision<0&&(n.precision=1,r=!1)}switch(n.arg=arguments[s],n.specifier){case"b":case"o":case"x":case"X":case"d":case"i":case"u":r&&(n.padZeros=!1),n.arg=Vq(n);break;case"s":n.maxWidth=r?n.precision:-1,n.arg=String(n.arg);break;case"c":if(!In(n.arg)){if(o=parseInt(n.arg,10),o<0||o>127)throw new Error("invalid character code. Value: "+n.arg);n.arg=In(o)?String(n.arg):Jq(o)}break;case"e":case"E":case"f":case"F":case"g":case"G":if(r||(n.precision=6),u=parseFloat(n.arg),!isFinite(u)){if(!Xq(n.arg))throw new Error("invalid floating-point number. Value: "+a);u=n.arg,n.padZeros=!1}n.arg=Qq(u,n);break;default:throw new Error("invalid specifier: "+n.specifier)}n.maxWidth>=0&&n.arg.length>n.maxWidth&&(n.arg=n.arg.substring(0,n.maxWidth)),n.padZeros?n.arg=Zq(n.arg,n.width||n.precision,n.padRight):n.width&&(n.arg=Kq(n.arg,n.width,n.padRight)),a+=n.arg||"",s+=1}return a}ks.exports=xq});var Bs=m((CG,$s)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ew=Us();$s.exports=ew});var js=m((DG,Hs)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _n=/%(?:([1-9]\d*)\$)?([0 +\-#]*)(\*|\d+)?(?:(\.)(\*|\d+)?)?[hlL]?([%A-Za-z])/g;function rw(e){var r={mapping:e[1]?parseInt(e[1],10):void 0,flags:e[2],width:e[3],precision:e[5],specifier:e[6]};return e[4]==="."&&e[5]===void 0&&(r.precision="1"),r}function tw(e){var r,t,n,i;for(t=[],i=0,n=_n.exec(e);n;)r=e.slice(i,_n.lastIndex-n[0].length),r.length&&t.push(r),n[6]==="%"?t.push("%"):t.push(rw(n)),i=_n.lastIndex,n=_n.exec(e);return r=e.slice(i),r.length&&t.push(r),t}Hs.exports=tw});var Vs=m((LG,Ws)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nw=js();Ws.exports=nw});var Xs=m((kG,Gs)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function iw(e){return typeof e=="string"}Gs.exports=iw});var Zs=m((UG,Ks)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ow=Bs(),aw=Vs(),sw=Xs();function Qs(e){var r,t;if(!sw(e))throw new TypeError(Qs("invalid argument. First argument must be a string. Value: `%s`.",e));for(r=[aw(e)],t=1;t<arguments.length;t++)r.push(arguments[t]);return ow.apply(null,r)}Ks.exports=Qs});var Ys=m(($G,Js)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uw=Zs();Js.exports=uw});var nu=m((BG,tu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zs=Ys(),it=Object.prototype,xs=it.toString,eu=it.__defineGetter__,ru=it.__defineSetter__,lw=it.__lookupGetter__,cw=it.__lookupSetter__;function fw(e,r,t){var n,i,o,a;if(typeof e!="object"||e===null||xs.call(e)==="[object Array]")throw new TypeError(zs("invalid argument. First argument must be an object. Value: `%s`.",e));if(typeof t!="object"||t===null||xs.call(t)==="[object Array]")throw new TypeError(zs("invalid argument. Property descriptor must be an object. Value: `%s`.",t));if(i="value"in t,i&&(lw.call(e,r)||cw.call(e,r)?(n=e.__proto__,e.__proto__=it,delete e[r],e[r]=t.value,e.__proto__=n):e[r]=t.value),o="get"in t,a="set"in t,i&&(o||a))throw new Error("invalid argument. Cannot specify one or more accessors and a value or writable attribute in the property descriptor.");return o&&eu&&eu.call(e,r,t.get),a&&ru&&ru.call(e,r,t.set),e}tu.exports=fw});var ou=m((HG,iu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mw=bs(),dw=ws(),pw=nu(),n0;mw()?n0=dw:n0=pw;iu.exports=n0});var su=m((jG,au)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vw=ou();function gw(e,r,t){vw(e,r,{configurable:!1,enumerable:!1,writable:!1,value:t})}au.exports=gw});var ve=m((WG,uu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hw=su();uu.exports=hw});var cu=m((VG,lu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function yw(e){return e!==e}lu.exports=yw});var T=m((GG,fu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bw=cu();fu.exports=bw});var Z=m((XG,mu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qw=Number.POSITIVE_INFINITY;mu.exports=qw});var pu=m((QG,du)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/du.exports=Number});var gu=m((KG,vu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ww=pu();vu.exports=ww});var me=m((ZG,hu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sw=gu(),Nw=Sw.NEGATIVE_INFINITY;hu.exports=Nw});var bu=m((JG,yu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ow=Z(),Aw=me();function Ew(e){return e===Ow||e===Aw}yu.exports=Ew});var Cr=m((YG,qu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Iw=bu();qu.exports=Iw});var Su=m((zG,wu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _w(e){return Math.abs(e)}wu.exports=_w});var L=m((xG,Nu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fw=Su();Nu.exports=Fw});var Au=m((eX,Ou)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Rw(){return typeof Symbol=="function"&&typeof Symbol("foo")=="symbol"}Ou.exports=Rw});var Iu=m((rX,Eu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Mw=Au();Eu.exports=Mw});var Fu=m((tX,_u)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Pw=Iu(),Tw=Pw();function Cw(){return Tw&&typeof Symbol.toStringTag=="symbol"}_u.exports=Cw});var Mu=m((nX,Ru)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Dw=Fu();Ru.exports=Dw});var i0=m((iX,Pu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Lw=Object.prototype.toString;Pu.exports=Lw});var Cu=m((oX,Tu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kw=i0();function Uw(e){return kw.call(e)}Tu.exports=Uw});var Lu=m((aX,Du)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $w=Object.prototype.hasOwnProperty;function Bw(e,r){return e==null?!1:$w.call(e,r)}Du.exports=Bw});var Uu=m((sX,ku)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hw=Lu();ku.exports=Hw});var Bu=m((uX,$u)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jw=typeof Symbol=="function"?Symbol:void 0;$u.exports=jw});var ju=m((lX,Hu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ww=Bu();Hu.exports=Ww});var Gu=m((cX,Vu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wu=ju(),Vw=typeof Wu=="function"?Wu.toStringTag:"";Vu.exports=Vw});var Qu=m((fX,Xu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Gw=Uu(),Mt=Gu(),o0=i0();function Xw(e){var r,t,n;if(e==null)return o0.call(e);t=e[Mt],r=Gw(e,Mt);try{e[Mt]=void 0}catch{return o0.call(e)}return n=o0.call(e),r?e[Mt]=t:delete e[Mt],n}Xu.exports=Xw});var Pt=m((mX,Ku)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Qw=Mu(),Kw=Cu(),Zw=Qu(),a0;Qw()?a0=Zw:a0=Kw;Ku.exports=a0});var Ju=m((dX,Zu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Jw=Pt(),Yw=typeof Uint32Array=="function";function zw(e){return Yw&&e instanceof Uint32Array||Jw(e)==="[object Uint32Array]"}Zu.exports=zw});var zu=m((pX,Yu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xw=Ju();Yu.exports=xw});var el=m((vX,xu)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eS=4294967295;xu.exports=eS});var tl=m((gX,rl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rS=typeof Uint32Array=="function"?Uint32Array:null;rl.exports=rS});var ol=m((hX,il)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tS=zu(),s0=el(),nl=tl();function nS(){var e,r;if(typeof nl!="function")return!1;try{r=[1,3.14,-3.14,s0+1,s0+2],r=new nl(r),e=tS(r)&&r[0]===1&&r[1]===3&&r[2]===s0-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}il.exports=nS});var sl=m((yX,al)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iS=ol();al.exports=iS});var ll=m((bX,ul)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oS=typeof Uint32Array=="function"?Uint32Array:void 0;ul.exports=oS});var fl=m((qX,cl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function aS(){throw new Error("not implemented")}cl.exports=aS});var Dr=m((wX,ml)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sS=sl(),uS=ll(),lS=fl(),u0;sS()?u0=uS:u0=lS;ml.exports=u0});var pl=m((SX,dl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cS=Pt(),fS=typeof Float64Array=="function";function mS(e){return fS&&e instanceof Float64Array||cS(e)==="[object Float64Array]"}dl.exports=mS});var gl=m((NX,vl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dS=pl();vl.exports=dS});var yl=m((OX,hl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pS=typeof Float64Array=="function"?Float64Array:null;hl.exports=pS});var wl=m((AX,ql)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vS=gl(),bl=yl();function gS(){var e,r;if(typeof bl!="function")return!1;try{r=new bl([1,3.14,-3.14,NaN]),e=vS(r)&&r[0]===1&&r[1]===3.14&&r[2]===-3.14&&r[3]!==r[3]}catch{e=!1}return e}ql.exports=gS});var Nl=m((EX,Sl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hS=wl();Sl.exports=hS});var Al=m((IX,Ol)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yS=typeof Float64Array=="function"?Float64Array:void 0;Ol.exports=yS});var Il=m((_X,El)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bS(){throw new Error("not implemented")}El.exports=bS});var Lr=m((FX,_l)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qS=Nl(),wS=Al(),SS=Il(),l0;qS()?l0=wS:l0=SS;_l.exports=l0});var Rl=m((RX,Fl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NS=Pt(),OS=typeof Uint8Array=="function";function AS(e){return OS&&e instanceof Uint8Array||NS(e)==="[object Uint8Array]"}Fl.exports=AS});var Pl=m((MX,Ml)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ES=Rl();Ml.exports=ES});var Cl=m((PX,Tl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IS=255;Tl.exports=IS});var Ll=m((TX,Dl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _S=typeof Uint8Array=="function"?Uint8Array:null;Dl.exports=_S});var $l=m((CX,Ul)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FS=Pl(),c0=Cl(),kl=Ll();function RS(){var e,r;if(typeof kl!="function")return!1;try{r=[1,3.14,-3.14,c0+1,c0+2],r=new kl(r),e=FS(r)&&r[0]===1&&r[1]===3&&r[2]===c0-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}Ul.exports=RS});var Hl=m((DX,Bl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MS=$l();Bl.exports=MS});var Wl=m((LX,jl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PS=typeof Uint8Array=="function"?Uint8Array:void 0;jl.exports=PS});var Gl=m((kX,Vl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function TS(){throw new Error("not implemented")}Vl.exports=TS});var Ql=m((UX,Xl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CS=Hl(),DS=Wl(),LS=Gl(),f0;CS()?f0=DS:f0=LS;Xl.exports=f0});var Zl=m(($X,Kl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kS=Pt(),US=typeof Uint16Array=="function";function $S(e){return US&&e instanceof Uint16Array||kS(e)==="[object Uint16Array]"}Kl.exports=$S});var Yl=m((BX,Jl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BS=Zl();Jl.exports=BS});var xl=m((HX,zl)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HS=65535;zl.exports=HS});var r1=m((jX,e1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jS=typeof Uint16Array=="function"?Uint16Array:null;e1.exports=jS});var i1=m((WX,n1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WS=Yl(),m0=xl(),t1=r1();function VS(){var e,r;if(typeof t1!="function")return!1;try{r=[1,3.14,-3.14,m0+1,m0+2],r=new t1(r),e=WS(r)&&r[0]===1&&r[1]===3&&r[2]===m0-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}n1.exports=VS});var a1=m((VX,o1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GS=i1();o1.exports=GS});var u1=m((GX,s1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XS=typeof Uint16Array=="function"?Uint16Array:void 0;s1.exports=XS});var c1=m((XX,l1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function QS(){throw new Error("not implemented")}l1.exports=QS});var m1=m((QX,f1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KS=a1(),ZS=u1(),JS=c1(),d0;KS()?d0=ZS:d0=JS;f1.exports=d0});var p1=m((KX,d1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YS=Ql(),zS=m1(),xS={uint16:zS,uint8:YS};d1.exports=xS});var y1=m((ZX,h1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var v1=p1(),g1;function eN(){var e,r;return e=new v1.uint16(1),e[0]=4660,r=new v1.uint8(e.buffer),r[0]===52}g1=eN();h1.exports=g1});var kr=m((JX,b1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rN=y1();b1.exports=rN});var w1=m((YX,q1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tN=kr(),p0;tN===!0?p0=1:p0=0;q1.exports=p0});var O1=m((zX,N1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nN=Dr(),iN=Lr(),oN=w1(),S1=new iN(1),aN=new nN(S1.buffer);function sN(e){return S1[0]=e,aN[oN]}N1.exports=sN});var be=m((xX,A1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uN=O1();A1.exports=uN});var I1=m((eQ,E1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lN=kr(),v0;lN===!0?v0=1:v0=0;E1.exports=v0});var F1=m((rQ,_1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cN=Dr(),fN=Lr(),mN=I1(),g0=new fN(1),dN=new cN(g0.buffer);function pN(e,r){return g0[0]=e,dN[mN]=r>>>0,g0[0]}_1.exports=pN});var ot=m((tQ,R1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vN=F1();R1.exports=vN});var mr=m((nQ,M1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gN=1023;M1.exports=gN});var T1=m((iQ,P1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hN(e){return e===0?.3999999999940942:.3999999999940942+e*(.22222198432149784+e*.15313837699209373)}P1.exports=hN});var D1=m((oQ,C1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function yN(e){return e===0?.6666666666666735:.6666666666666735+e*(.2857142874366239+e*(.1818357216161805+e*.14798198605116586))}C1.exports=yN});var $1=m((aQ,U1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_log.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var L1=be(),bN=ot(),qN=T(),wN=mr(),SN=me(),NN=T1(),ON=D1(),Fn=.6931471803691238,Rn=19082149292705877e-26,AN=0x40000000000000,EN=.3333333333333333,k1=1048575,IN=2146435072,_N=1048576,FN=1072693248;function RN(e){var r,t,n,i,o,a,s,u,l,c,f,d;return e===0?SN:qN(e)||e<0?NaN:(t=L1(e),o=0,t<_N&&(o-=54,e*=AN,t=L1(e)),t>=IN?e+e:(o+=(t>>20)-wN|0,t&=k1,u=t+614244&1048576|0,e=bN(e,t|u^FN),o+=u>>20|0,s=e-1,(k1&2+t)<3?s===0?o===0?0:o*Fn+o*Rn:(a=s*s*(.5-EN*s),o===0?s-a:o*Fn-(a-o*Rn-s)):(c=s/(2+s),d=c*c,u=t-398458|0,f=d*d,l=440401-t|0,i=f*NN(f),n=d*ON(f),u|=l,a=n+i,u>0?(r=.5*s*s,o===0?s-(r-c*(r+a)):o*Fn-(r-(c*(r+a)+o*Rn)-s)):o===0?s-c*(s-a):o*Fn-(c*(s-a)-o*Rn-s))))}U1.exports=RN});var B=m((sQ,B1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MN=$1();B1.exports=MN});var j1=m((uQ,H1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PN=Math.floor;H1.exports=PN});var _e=m((lQ,W1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TN=j1();W1.exports=TN});var G1=m((cQ,V1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CN=Math.ceil;V1.exports=CN});var Q1=m((fQ,X1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DN=G1();X1.exports=DN});var Z1=m((mQ,K1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LN=_e(),kN=Q1();function UN(e){return e<0?kN(e):LN(e)}K1.exports=UN});var Mn=m((dQ,J1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $N=Z1();J1.exports=$N});var z1=m((pQ,Y1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function BN(e){return e===0?.0416666666666666:.0416666666666666+e*(-.001388888888887411+e*2480158728947673e-20)}Y1.exports=BN});var ec=m((vQ,x1)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function HN(e){return e===0?-27557314351390663e-23:-27557314351390663e-23+e*(2087572321298175e-24+e*-11359647557788195e-27)}x1.exports=HN});var tc=m((gQ,rc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/k_cos.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var jN=z1(),WN=ec();function VN(e,r){var t,n,i,o;return o=e*e,i=o*o,n=o*jN(o),n+=i*i*WN(o),t=.5*o,i=1-t,i+(1-i-t+(o*n-e*r))}rc.exports=VN});var h0=m((hQ,nc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GN=tc();nc.exports=GN});var ac=m((yQ,oc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_sin.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var ic=-.16666666666666632,XN=.00833333333332249,QN=-.0001984126982985795,KN=27557313707070068e-22,ZN=-25050760253406863e-24,JN=158969099521155e-24;function YN(e,r){var t,n,i,o;return o=e*e,i=o*o,t=XN+o*(QN+o*KN)+o*i*(ZN+o*JN),n=o*e,r===0?e+n*(ic+o*t):e-(o*(.5*r-n*t)-r-n*ic)}oc.exports=YN});var y0=m((bQ,sc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zN=ac();sc.exports=zN});var dr=m((qQ,uc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xN=2147483647;uc.exports=xN});var Tt=m((wQ,lc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eO=2146435072;lc.exports=eO});var b0=m((SQ,cc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rO=1048575;cc.exports=rO});var mc=m((NQ,fc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tO=kr(),q0;tO===!0?q0=0:q0=1;fc.exports=q0});var vc=m((OQ,pc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nO=Dr(),iO=Lr(),oO=mc(),dc=new iO(1),aO=new nO(dc.buffer);function sO(e){return dc[0]=e,aO[oO]}pc.exports=sO});var hc=m((AQ,gc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uO=vc();gc.exports=uO});var qc=m((EQ,bc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lO=kr(),yc,w0,S0;lO===!0?(w0=1,S0=0):(w0=0,S0=1);yc={HIGH:w0,LOW:S0};bc.exports=yc});var Ac=m((IQ,Oc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cO=Dr(),fO=Lr(),Sc=qc(),Nc=new fO(1),wc=new cO(Nc.buffer),mO=Sc.HIGH,dO=Sc.LOW;function pO(e,r){return wc[mO]=e,wc[dO]=r,Nc[0]}Oc.exports=pO});var Ct=m((_Q,Ec)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vO=Ac();Ec.exports=vO});var _c=m((FQ,Ic)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gO=1023;Ic.exports=gO});var Rc=m((RQ,Fc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hO=-1023;Fc.exports=hO});var Pc=m((MQ,Mc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yO=-1074;Mc.exports=yO});var Cc=m((PQ,Tc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bO=2147483648;Tc.exports=bO});var kc=m((TQ,Lc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qO=kr(),Dc,N0,O0;qO===!0?(N0=1,O0=0):(N0=0,O0=1);Dc={HIGH:N0,LOW:O0};Lc.exports=Dc});var A0=m((CQ,Hc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wO=Dr(),SO=Lr(),$c=kc(),Bc=new SO(1),Uc=new wO(Bc.buffer),NO=$c.HIGH,OO=$c.LOW;function AO(e,r,t,n){return Bc[0]=e,r[n]=Uc[NO],r[n+t]=Uc[OO],r}Hc.exports=AO});var Wc=m((DQ,jc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EO=A0();function IO(e){return EO(e,[0,0],1,0)}jc.exports=IO});var Pn=m((LQ,Gc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _O=ve(),Vc=Wc(),FO=A0();_O(Vc,"assign",FO);Gc.exports=Vc});var Qc=m((kQ,Xc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RO=Cc(),MO=dr(),PO=Pn(),TO=be(),CO=Ct(),E0=[0,0];function DO(e,r){var t,n;return PO.assign(e,E0,1,0),t=E0[0],t&=MO,n=TO(r),n&=RO,t|=n,CO(t,E0[1])}Xc.exports=DO});var Tn=m((UQ,Kc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LO=Qc();Kc.exports=LO});var pr=m(($Q,Zc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kO=22250738585072014e-324;Zc.exports=kO});var I0=m((BQ,Jc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UO=pr(),$O=Cr(),BO=T(),HO=L(),jO=4503599627370496;function WO(e,r,t,n){return BO(e)||$O(e)?(r[n]=e,r[n+t]=0,r):e!==0&&HO(e)<UO?(r[n]=e*jO,r[n+t]=-52,r):(r[n]=e,r[n+t]=0,r)}Jc.exports=WO});var zc=m((HQ,Yc)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VO=I0();function GO(e){return VO(e,[0,0],1,0)}Yc.exports=GO});var rf=m((jQ,ef)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XO=ve(),xc=zc(),QO=I0();XO(xc,"assign",QO);ef.exports=xc});var nf=m((WQ,tf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KO=be(),ZO=Tt(),JO=mr();function YO(e){var r=KO(e);return r=(r&ZO)>>>20,r-JO|0}tf.exports=YO});var af=m((VQ,of)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zO=nf();of.exports=zO});var uf=m((GQ,sf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xO=Z(),eA=me(),rA=mr(),tA=_c(),nA=Rc(),iA=Pc(),oA=T(),aA=Cr(),sA=Tn(),uA=rf().assign,lA=af(),cA=Pn(),fA=Ct(),mA=2220446049250313e-31,dA=2148532223,_0=[0,0],F0=[0,0];function pA(e,r){var t,n;return r===0||e===0||oA(e)||aA(e)?e:(uA(e,_0,1,0),e=_0[0],r+=_0[1],r+=lA(e),r<iA?sA(0,e):r>tA?e<0?eA:xO:(r<=nA?(r+=52,n=mA):n=1,cA.assign(e,F0,1,0),t=F0[0],t&=dA,t|=r+rA<<20,n*fA(t,F0[1])))}sf.exports=pA});var Ur=m((XQ,lf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vA=uf();lf.exports=vA});var ff=m((QQ,cf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function gA(e,r){var t,n;for(t=[],n=0;n<r;n++)t.push(e);return t}cf.exports=gA});var df=m((KQ,mf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hA=ff();mf.exports=hA});var vf=m((ZQ,pf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yA=df();function bA(e){return yA(0,e)}pf.exports=bA});var hf=m((JQ,gf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qA=vf();gf.exports=qA});var Sf=m((YQ,wf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var wA=_e(),Cn=Ur(),kn=hf(),bf=[10680707,7228996,1387004,2578385,16069853,12639074,9804092,4427841,16666979,11263675,12935607,2387514,4345298,14681673,3074569,13734428,16653803,1880361,10960616,8533493,3062596,8710556,7349940,6258241,3772886,3769171,3798172,8675211,12450088,3874808,9961438,366607,15675153,9132554,7151469,3571407,2607881,12013382,4155038,6285869,7677882,13102053,15825725,473591,9065106,15363067,6271263,9264392,5636912,4652155,7056368,13614112,10155062,1944035,9527646,15080200,6658437,6231200,6832269,16767104,5075751,3212806,1398474,7579849,6349435,12618859],SA=[1.570796251296997,7549789415861596e-23,5390302529957765e-30,3282003415807913e-37,1270655753080676e-44,12293330898111133e-52,27337005381646456e-60,21674168387780482e-67],R0=16777216,M0=5960464477539063e-23,Dn=kn(20),yf=kn(20),Ln=kn(20),ce=kn(20);function qf(e,r,t,n,i,o,a,s,u){var l,c,f,d,p,v,g,y,h;for(d=o,h=n[t],y=t,p=0;y>0;p++)c=M0*h|0,ce[p]=h-R0*c|0,h=n[y-1]+c,y-=1;if(h=Cn(h,i),h-=8*wA(h*.125),g=h|0,h-=g,f=0,i>0?(p=ce[t-1]>>24-i,g+=p,ce[t-1]-=p<<24-i,f=ce[t-1]>>23-i):i===0?f=ce[t-1]>>23:h>=.5&&(f=2),f>0){for(g+=1,l=0,p=0;p<t;p++)y=ce[p],l===0?y!==0&&(l=1,ce[p]=16777216-y):ce[p]=16777215-y;if(i>0)switch(i){case 1:ce[t-1]&=8388607;break;case 2:ce[t-1]&=4194303;break}f===2&&(h=1-h,l!==0&&(h-=Cn(1,i)))}if(h===0){for(y=0,p=t-1;p>=o;p--)y|=ce[p];if(y===0){for(v=1;ce[o-v]===0;v++);for(p=t+1;p<=t+v;p++){for(u[s+p]=bf[a+p],c=0,y=0;y<=s;y++)c+=e[y]*u[s+(p-y)];n[p]=c}return t+=v,qf(e,r,t,n,i,o,a,s,u)}for(t-=1,i-=24;ce[t]===0;)t-=1,i-=24}else h=Cn(h,-i),h>=R0?(c=M0*h|0,ce[t]=h-R0*c|0,t+=1,i+=24,ce[t]=c):ce[t]=h|0;for(c=Cn(1,i),p=t;p>=0;p--)n[p]=c*ce[p],c*=M0;for(p=t;p>=0;p--){for(c=0,v=0;v<=d&&v<=t-p;v++)c+=SA[v]*n[p+v];Ln[t-p]=c}for(c=0,p=t;p>=0;p--)c+=Ln[p];for(f===0?r[0]=c:r[0]=-c,c=Ln[0]-c,p=1;p<=t;p++)c+=Ln[p];return f===0?r[1]=c:r[1]=-c,g&7}function NA(e,r,t,n){var i,o,a,s,u,l,c,f,d;for(o=4,s=n-1,a=(t-3)/24|0,a<0&&(a=0),l=t-24*(a+1),f=a-s,d=s+o,c=0;c<=d;c++)f<0?Dn[c]=0:Dn[c]=bf[f],f+=1;for(c=0;c<=o;c++){for(i=0,f=0;f<=s;f++)i+=e[f]*Dn[s+(c-f)];yf[c]=i}return u=o,qf(e,r,u,yf,l,o,a,s,Dn)}wf.exports=NA});var Of=m((zQ,Nf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OA=Math.round;Nf.exports=OA});var P0=m((xQ,Af)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AA=Of();Af.exports=AA});var Ff=m((eK,_f)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var EA=P0(),Ef=be(),IA=.6366197723675814,_A=1.5707963267341256,FA=6077100506506192e-26,RA=6077100506303966e-26,MA=20222662487959506e-37,PA=20222662487111665e-37,TA=84784276603689e-45,If=2047;function CA(e,r,t){var n,i,o,a,s,u,l;return i=EA(e*IA),a=e-i*_A,s=i*FA,l=r>>20|0,t[0]=a-s,n=Ef(t[0]),u=l-(n>>20&If),u>16&&(o=a,s=i*RA,a=o-s,s=i*MA-(o-a-s),t[0]=a-s,n=Ef(t[0]),u=l-(n>>20&If),u>49&&(o=a,s=i*PA,a=o-s,s=i*TA-(o-a-s),t[0]=a-s)),t[1]=a-t[0]-s,i}_f.exports=CA});var Mf=m((rK,Rf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
*
* Optimized by Bruce D. Evans.
* ```
*/var DA=dr(),LA=Tt(),kA=b0(),UA=be(),$A=hc(),BA=Ct(),HA=Sf(),Un=Ff(),jA=0,WA=16777216,vr=1.5707963267341256,$r=6077100506506192e-26,$n=2*$r,Bn=3*$r,Hn=4*$r,VA=598523,GA=1072243195,XA=1073928572,QA=1074752122,KA=1074977148,ZA=1075183036,JA=1075388923,YA=1075594811,zA=1094263291,Dt=[0,0,0],Lt=[0,0];function xA(e,r){var t,n,i,o,a,s,u,l;if(i=UA(e)|0,o=i&DA|0,o<=GA)return r[0]=e,r[1]=0,0;if(o<=QA)return(o&kA)===VA?Un(e,o,r):o<=XA?i>0?(l=e-vr,r[0]=l-$r,r[1]=l-r[0]-$r,1):(l=e+vr,r[0]=l+$r,r[1]=l-r[0]+$r,-1):i>0?(l=e-2*vr,r[0]=l-$n,r[1]=l-r[0]-$n,2):(l=e+2*vr,r[0]=l+$n,r[1]=l-r[0]+$n,-2);if(o<=YA)return o<=ZA?o===KA?Un(e,o,r):i>0?(l=e-3*vr,r[0]=l-Bn,r[1]=l-r[0]-Bn,3):(l=e+3*vr,r[0]=l+Bn,r[1]=l-r[0]+Bn,-3):o===JA?Un(e,o,r):i>0?(l=e-4*vr,r[0]=l-Hn,r[1]=l-r[0]-Hn,4):(l=e+4*vr,r[0]=l+Hn,r[1]=l-r[0]+Hn,-4);if(o<zA)return Un(e,o,r);if(o>=LA)return r[0]=NaN,r[1]=NaN,0;for(t=$A(e),n=(o>>20)-1046,l=BA(o-(n<<20|0),t),s=0;s<2;s++)Dt[s]=l|0,l=(l-Dt[s])*WA;for(Dt[2]=l,a=3;Dt[a-1]===jA;)a-=1;return u=HA(Dt,Lt,n,a,1),i<0?(r[0]=-Lt[0],r[1]=-Lt[1],-u):(r[0]=Lt[0],r[1]=Lt[1],u)}Rf.exports=xA});var T0=m((tK,Pf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eE=Mf();Pf.exports=eE});var Df=m((nK,Cf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_cos.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var rE=be(),C0=h0(),Tf=y0(),tE=T0(),nE=dr(),iE=Tt(),Ye=[0,0],oE=1072243195,aE=1044381696;function sE(e){var r,t;if(r=rE(e),r&=nE,r<=oE)return r<aE?1:C0(e,0);if(r>=iE)return NaN;switch(t=tE(e,Ye),t&3){case 0:return C0(Ye[0],Ye[1]);case 1:return-Tf(Ye[0],Ye[1]);case 2:return-C0(Ye[0],Ye[1]);default:return Tf(Ye[0],Ye[1])}}Cf.exports=sE});var jn=m((iK,Lf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uE=Df();Lf.exports=uE});var $f=m((oK,Uf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_sin.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var lE=dr(),cE=Tt(),fE=be(),kf=h0(),D0=y0(),mE=T0(),dE=1072243195,pE=1045430272,ze=[0,0];function vE(e){var r,t;if(r=fE(e),r&=lE,r<=dE)return r<pE?e:D0(e,0);if(r>=cE)return NaN;switch(t=mE(e,ze),t&3){case 0:return D0(ze[0],ze[1]);case 1:return kf(ze[0],ze[1]);case 2:return-D0(ze[0],ze[1]);default:return-kf(ze[0],ze[1])}}Uf.exports=vE});var at=m((aK,Bf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gE=$f();Bf.exports=gE});var xe=m((sK,Hf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hE=3.141592653589793;Hf.exports=hE});var Vf=m((uK,Wf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yE=T(),bE=Cr(),jf=jn(),L0=at(),qE=L(),kt=Tn(),Ut=xe();function wE(e){var r,t;return yE(e)?NaN:bE(e)?NaN:(t=e%2,r=qE(t),r===0||r===1?kt(0,t):r<.25?L0(Ut*t):r<.75?(r=.5-r,kt(jf(Ut*r),t)):r<1.25?(t=kt(1,t)-t,L0(Ut*t)):r<1.75?(r-=1.5,-kt(jf(Ut*r),t)):(t-=kt(2,t),L0(Ut*t)))}Wf.exports=wE});var Xf=m((lK,Gf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SE=Vf();Gf.exports=SE});var Kf=m((cK,Qf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function NE(e){return e===0?.06735230105312927:.06735230105312927+e*(.007385550860814029+e*(.0011927076318336207+e*(.00022086279071390839+e*25214456545125733e-21)))}Qf.exports=NE});var Jf=m((fK,Zf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function OE(e){return e===0?.020580808432516733:.020580808432516733+e*(.0028905138367341563+e*(.0005100697921535113+e*(.00010801156724758394+e*44864094961891516e-21)))}Zf.exports=OE});var zf=m((mK,Yf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function AE(e){return e===0?1.3920053346762105:1.3920053346762105+e*(.7219355475671381+e*(.17193386563280308+e*(.01864591917156529+e*(.0007779424963818936+e*7326684307446256e-21))))}Yf.exports=AE});var e2=m((dK,xf)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function EE(e){return e===0?.21498241596060885:.21498241596060885+e*(.325778796408931+e*(.14635047265246445+e*(.02664227030336386+e*(.0018402845140733772+e*3194753265841009e-20))))}xf.exports=EE});var t2=m((pK,r2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function IE(e){return e===0?-.032788541075985965:-.032788541075985965+e*(.006100538702462913+e*(-.0014034646998923284+e*.00031563207090362595))}r2.exports=IE});var i2=m((vK,n2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _E(e){return e===0?.01797067508118204:.01797067508118204+e*(-.0036845201678113826+e*(.000881081882437654+e*-.00031275416837512086))}n2.exports=_E});var a2=m((gK,o2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function FE(e){return e===0?-.010314224129834144:-.010314224129834144+e*(.0022596478090061247+e*(-.0005385953053567405+e*.0003355291926355191))}o2.exports=FE});var u2=m((hK,s2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function RE(e){return e===0?.6328270640250934:.6328270640250934+e*(1.4549225013723477+e*(.9777175279633727+e*(.22896372806469245+e*.013381091853678766)))}s2.exports=RE});var c2=m((yK,l2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ME(e){return e===0?2.4559779371304113:2.4559779371304113+e*(2.128489763798934+e*(.7692851504566728+e*(.10422264559336913+e*.003217092422824239)))}l2.exports=ME});var m2=m((bK,f2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function PE(e){return e===0?.08333333333333297:.08333333333333297+e*(-.0027777777772877554+e*(.0007936505586430196+e*(-.00059518755745034+e*(.0008363399189962821+e*-.0016309293409657527))))}f2.exports=PE});var v2=m((qK,p2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/e_lgamma_r.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var TE=T(),CE=Cr(),DE=L(),st=B(),LE=Mn(),kE=Xf(),UE=xe(),k0=Z(),$E=Kf(),BE=Jf(),HE=zf(),jE=e2(),WE=t2(),VE=i2(),GE=a2(),XE=u2(),QE=c2(),KE=m2(),ZE=.07721566490153287,JE=.3224670334241136,YE=1,zE=-.07721566490153287,xE=.48383612272381005,eI=-.1475877229945939,rI=.06462494023913339,tI=-.07721566490153287,nI=1,iI=.4189385332046727,Wn=1.4616321449683622,oI=4503599627370496,aI=72057594037927940,sI=13877787807814457e-33,d2=1.4616321449683622,uI=-.12148629053584961,lI=-3638676997039505e-33;function cI(e){var r,t,n,i,o,a,s,u,l,c,f,d,p;if(TE(e)||CE(e))return e;if(e===0)return k0;if(e<0?(r=!0,e=-e):r=!1,e<sI)return-st(e);if(r){if(e>=oI||(l=kE(e),l===0))return k0;t=st(UE/DE(l*e))}if(e===1||e===2)return 0;if(e<2)switch(e<=.9?(p=-st(e),e>=Wn-1+.27?(f=1-e,n=0):e>=Wn-1-.27?(f=e-(d2-1),n=1):(f=e,n=2)):(p=0,e>=Wn+.27?(f=2-e,n=0):e>=Wn-.27?(f=e-d2,n=1):(f=e-1,n=2)),n){case 0:d=f*f,a=ZE+d*$E(d),o=d*(JE+d*BE(d)),s=f*a+o,p+=s-.5*f;break;case 1:d=f*f,c=d*f,a=xE+c*WE(c),o=eI+c*VE(c),i=rI+c*GE(c),s=d*a-(lI-c*(o+f*i)),p+=uI+s;break;case 2:a=f*(tI+f*XE(f)),o=nI+f*QE(f),p+=-.5*f+a/o;break}else if(e<8)switch(n=LE(e),f=e-n,s=f*(zE+f*jE(f)),u=YE+f*HE(f),p=.5*f+s/u,d=1,n){case 7:d*=f+6;case 6:d*=f+5;case 5:d*=f+4;case 4:d*=f+3;case 3:d*=f+2,p+=st(d)}else e<aI?(l=st(e),d=1/e,f=d*d,c=iI+d*KE(f),p=(e-.5)*(l-1)+c):p=e*(st(e)-1);return r&&(p=t-p),p}p2.exports=cI});var ut=m((wK,g2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fI=v2();g2.exports=fI});var y2=m((SK,h2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function mI(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}h2.exports=mI});var q2=m((NK,b2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyrights, licenses, and long comment were part of the original implementation available as part of [Go]{@link https://github.com/golang/go/blob/cb07765045aed5104a3df31507564ac99e6ddce8/src/math/exp.go}, which in turn was based on an implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_exp.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (c) 2009 The Go Authors. All rights reserved.
*
* Redistribution and use in source and binary forms, with or without
* modification, are permitted provided that the following conditions are
* met:
*
*    * Redistributions of source code must retain the above copyright
* notice, this list of conditions and the following disclaimer.
*    * Redistributions in binary form must reproduce the above
* copyright notice, this list of conditions and the following disclaimer
* in the documentation and/or other materials provided with the
* distribution.
*    * Neither the name of Google Inc. nor the names of its
* contributors may be used to endorse or promote products derived from
* this software without specific prior written permission.
*
* THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS
* "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT
* LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR
* A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT
* OWNER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL,
* SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT
* LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE,
* DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY
* THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT
* (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
* OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
* ```
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var dI=Ur(),pI=y2();function vI(e,r,t){var n,i,o,a;return n=e-r,i=n*n,o=n-i*pI(i),a=1-(r-n*o/(2-o)-e),dI(a,t)}b2.exports=vI});var E2=m((OK,A2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyrights, licenses, and long comment were part of the original implementation available as part of [Go]{@link https://github.com/golang/go/blob/cb07765045aed5104a3df31507564ac99e6ddce8/src/math/exp.go}, which in turn was based on an implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_exp.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (c) 2009 The Go Authors. All rights reserved.
*
* Redistribution and use in source and binary forms, with or without
* modification, are permitted provided that the following conditions are
* met:
*
*    * Redistributions of source code must retain the above copyright
* notice, this list of conditions and the following disclaimer.
*    * Redistributions in binary form must reproduce the above
* copyright notice, this list of conditions and the following disclaimer
* in the documentation and/or other materials provided with the
* distribution.
*    * Neither the name of Google Inc. nor the names of its
* contributors may be used to endorse or promote products derived from
* this software without specific prior written permission.
*
* THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS
* "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT
* LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR
* A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT
* OWNER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL,
* SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT
* LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE,
* DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY
* THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT
* (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
* OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
* ```
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var gI=T(),w2=Mn(),hI=me(),S2=Z(),yI=q2(),bI=.6931471803691238,qI=19082149292705877e-26,N2=1.4426950408889634,wI=709.782712893384,SI=-745.1332191019411,O2=1/(1<<28),NI=-O2;function OI(e){var r,t,n;return gI(e)||e===S2?e:e===hI?0:e>wI?S2:e<SI?0:e>NI&&e<O2?1+e:(e<0?n=w2(N2*e-.5):n=w2(N2*e+.5),r=e-n*bI,t=n*qI,yI(r,t,n))}A2.exports=OI});var J=m((AK,I2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AI=E2();I2.exports=AI});var $t=m((EK,_2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EI=2.5066282746310007;_2.exports=EI});var er=m((IK,F2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var II=709.782712893384;F2.exports=II});var Bt=m((_K,R2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _I=170;R2.exports=_I});var P2=m((FK,M2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FI=_e();function RI(e){return FI(e)===e}M2.exports=RI});var Br=m((RK,T2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MI=P2();T2.exports=MI});var D2=m((MK,C2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PI=me();function TI(e){return e===0&&1/e===PI}C2.exports=TI});var U0=m((PK,L2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CI=D2();L2.exports=CI});var U2=m((TK,k2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DI=Br();function LI(e){return DI(e/2)}k2.exports=LI});var B2=m((CK,$2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kI=U2();$2.exports=kI});var W2=m((DK,j2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var H2=B2();function UI(e){return e>0?H2(e-1):H2(e+1)}j2.exports=UI});var Vn=m((LK,V2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $I=W2();V2.exports=$I});var X2=m((kK,G2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BI=Math.sqrt;G2.exports=BI});var $=m((UK,Q2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HI=X2();Q2.exports=HI});var Z2=m(($K,K2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jI=kr(),$0;jI===!0?$0=0:$0=1;K2.exports=$0});var Y2=m((BK,J2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WI=Dr(),VI=Lr(),GI=Z2(),B0=new VI(1),XI=new WI(B0.buffer);function QI(e,r){return B0[0]=e,XI[GI]=r>>>0,B0[0]}J2.exports=QI});var lt=m((HK,z2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KI=Y2();z2.exports=KI});var em=m((jK,x2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZI(e){return e|0}x2.exports=ZI});var H0=m((WK,rm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JI=em();rm.exports=JI});var im=m((VK,nm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var tm=Vn(),YI=Tn(),zI=me(),Gn=Z();function xI(e,r){return r===zI?Gn:r===Gn?0:r>0?tm(r)?e:0:tm(r)?YI(Gn,e):Gn}nm.exports=xI});var am=m((GK,om)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var e_=dr(),r_=be(),t_=1072693247,Xn=1e300,Qn=1e-300;function n_(e,r){var t,n;return n=r_(e),t=n&e_,t<=t_?r<0?Xn*Xn:Qn*Qn:r>0?Xn*Xn:Qn*Qn}om.exports=n_});var lm=m((XK,um)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var i_=L(),sm=Z();function o_(e,r){return e===-1?(e-e)/(e-e):e===1?1:i_(e)<1==(r===sm)?0:sm}um.exports=o_});var j0=m((QK,cm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var a_=20;cm.exports=a_});var mm=m((KK,fm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function s_(e){return e===0?.5999999999999946:.5999999999999946+e*(.4285714285785502+e*(.33333332981837743+e*(.272728123808534+e*(.23066074577556175+e*.20697501780033842))))}fm.exports=s_});var gm=m((ZK,vm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var u_=be(),Kn=lt(),dm=ot(),l_=mr(),c_=j0(),f_=mm(),m_=1048575,pm=1048576,d_=1072693248,p_=536870912,v_=524288,g_=9007199254740992,h_=.9617966939259756,y_=.9617967009544373,b_=-7028461650952758e-24,q_=[1,1.5],w_=[0,.5849624872207642],S_=[0,1350039202129749e-23];function N_(e,r,t){var n,i,o,a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M;return I=0,t<pm&&(r*=g_,I-=53,t=u_(r)),I+=(t>>c_)-l_|0,A=t&m_|0,t=A|d_|0,A<=235662?M=0:A<767610?M=1:(M=0,I+=1,t-=pm),r=dm(r,t),c=q_[M],N=r-c,O=1/(r+c),i=N*O,a=Kn(i,0),n=(t>>1|p_)+v_,n+=M<<18,u=dm(0,n),l=r-(u-c),s=O*(N-a*u-a*l),o=i*i,b=o*o*f_(o),b+=s*(a+i),o=a*a,u=3+o+b,u=Kn(u,0),l=b-(u-3-o),N=a*u,O=s*u+l*i,d=N+O,d=Kn(d,0),p=O-(d-N),v=y_*d,g=b_*d+p*h_+S_[M],f=w_[M],q=I,y=v+g+f+q,y=Kn(y,0),h=g-(y-q-f-v),e[0]=y,e[1]=h,e}vm.exports=N_});var ym=m((JK,hm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function O_(e){return e===0?.5:.5+e*(-.3333333333333333+e*.25)}hm.exports=O_});var qm=m((YK,bm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var A_=lt(),E_=ym(),I_=1.4426950408889634,__=1.4426950216293335,F_=19259629911266175e-24;function R_(e,r){var t,n,i,o,a,s;return i=r-1,o=i*i*E_(i),a=__*i,s=i*F_-o*I_,n=a+s,n=A_(n,0),t=s-(n-a),e[0]=n,e[1]=t,e}bm.exports=R_});var Sm=m((zK,wm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var M_=.6931471805599453;wm.exports=M_});var Om=m((xK,Nm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function P_(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}Nm.exports=P_});var Mm=m((eZ,Rm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var T_=be(),Am=ot(),C_=lt(),D_=H0(),L_=Ur(),k_=Sm(),Em=mr(),Im=dr(),_m=b0(),Ht=j0(),U_=Om(),Fm=1048576,$_=1071644672,B_=.6931471824645996,H_=-1904654299957768e-24;function j_(e,r,t){var n,i,o,a,s,u,l,c,f,d,p;return d=e&Im|0,p=(d>>Ht)-Em|0,f=0,d>$_&&(f=e+(Fm>>p+1)>>>0,p=((f&Im)>>Ht)-Em|0,n=(f&~(_m>>p))>>>0,o=Am(0,n),f=(f&_m|Fm)>>Ht-p>>>0,e<0&&(f=-f),r-=o),o=t+r,o=C_(o,0),s=o*B_,u=(t-(o-r))*k_+o*H_,c=s+u,l=u-(c-s),o=c*c,i=c-o*U_(o),a=c*i/(i-2)-(l+c*l),c=1-(a-c),e=T_(c),e=D_(e),e+=f<<Ht>>>0,e>>Ht<=0?c=L_(c,f):c=Am(c,e),c}Rm.exports=j_});var jm=m((rZ,Hm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var Pm=T(),Tm=Vn(),Cm=Cr(),W_=Br(),Dm=$(),V_=L(),W0=Pn(),G_=lt(),Lm=H0(),X_=me(),Q_=Z(),V0=dr(),K_=im(),Z_=am(),J_=lm(),Y_=gm(),z_=qm(),x_=Mm(),eF=1072693247,rF=1105199104,tF=1139802112,km=1083179008,nF=1072693248,iF=1083231232,oF=3230714880,Um=31,gr=1e300,hr=1e-300,aF=8008566259537294e-32,rr=[0,0],$m=[0,0];function Bm(e,r){var t,n,i,o,a,s,u,l,c,f,d,p,v,g,y,h;if(Pm(e)||Pm(r))return NaN;if(W0.assign(r,rr,1,0),s=rr[0],u=rr[1],u===0){if(r===0)return 1;if(r===1)return e;if(r===-1)return 1/e;if(r===.5)return Dm(e);if(r===-.5)return 1/Dm(e);if(r===2)return e*e;if(r===3)return e*e*e;if(r===4)return e*=e,e*e;if(Cm(r))return J_(e,r)}if(W0.assign(e,rr,1,0),o=rr[0],a=rr[1],a===0){if(o===0)return K_(e,r);if(e===1)return 1;if(e===-1&&Tm(r))return-1;if(Cm(e))return e===X_?Bm(-0,-r):r<0?0:Q_}if(e<0&&W_(r)===!1)return(e-e)/(e-e);if(i=V_(e),t=o&V0|0,n=s&V0|0,l=o>>>Um|0,c=s>>>Um|0,l&&Tm(r)?l=-1:l=1,n>rF){if(n>tF)return Z_(e,r);if(t<eF)return c===1?l*gr*gr:l*hr*hr;if(t>nF)return c===0?l*gr*gr:l*hr*hr;v=z_($m,i)}else v=Y_($m,i,t);if(f=G_(r,0),p=(r-f)*v[0]+r*v[1],d=f*v[0],g=p+d,W0.assign(g,rr,1,0),y=Lm(rr[0]),h=Lm(rr[1]),y>=km){if((y-km|h)!==0||p+aF>g-d)return l*gr*gr}else if((y&V0)>=iF&&((y-oF|h)!==0||p<=g-d))return l*hr*hr;return g=x_(y,d,p),l*g}Hm.exports=Bm});var Y=m((tZ,Wm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sF=jm();Wm.exports=sF});var Gm=m((nZ,Vm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function uF(e){return e===0?.08333333333334822:.08333333333334822+e*(.0034722222160545866+e*(-.0026813261780578124+e*(-.00022954996161337813+e*.0007873113957930937)))}Vm.exports=uF});var Km=m((iZ,Qm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var lF=$t(),Xm=Y(),cF=J(),fF=Gm(),mF=143.01608;function dF(e){var r,t,n;return r=1/e,r=1+r*fF(r),t=cF(e),e>mF?(n=Xm(e,.5*e-.25),t=n*(n/t)):t=Xm(e,e-.5)/t,lF*t*r}Qm.exports=dF});var Jm=m((oZ,Zm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pF=.5772156649015329;Zm.exports=pF});var zm=m((aZ,Ym)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var vF=Jm();function gF(e,r){return r/((1+vF*e)*e)}Ym.exports=gF});var e3=m((sZ,xm)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hF(e){var r,t,n;return e===0?1:(e<0?r=-e:r=e,r<=1?(t=1+e*(.4942148268014971+e*(.20744822764843598+e*(.04763678004571372+e*(.010421379756176158+e*(.0011913514700658638+e*(.00016011952247675185+e*0)))))),n=1+e*(.0714304917030273+e*(-.23459179571824335+e*(.035823639860549865+e*(.011813978522206043+e*(-.004456419138517973+e*(.0005396055804933034+e*-23158187332412014e-21))))))):(e=1/e,t=0+e*(.00016011952247675185+e*(.0011913514700658638+e*(.010421379756176158+e*(.04763678004571372+e*(.20744822764843598+e*(.4942148268014971+e*1)))))),n=-23158187332412014e-21+e*(.0005396055804933034+e*(-.004456419138517973+e*(.011813978522206043+e*(.035823639860549865+e*(-.23459179571824335+e*(.0714304917030273+e*1))))))),t/n)}xm.exports=hF});var u3=m((uZ,s3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var yF=T(),bF=Br(),qF=U0(),r3=L(),wF=_e(),SF=at(),t3=Z(),n3=me(),i3=xe(),o3=Km(),a3=zm(),NF=e3();function OF(e){var r,t,n,i;if(bF(e)&&e<0||e===n3||yF(e))return NaN;if(e===0)return qF(e)?n3:t3;if(e>171.61447887182297)return t3;if(e<-170.5674972726612)return 0;if(t=r3(e),t>33)return e>=0?o3(e):(n=wF(t),(n&1)===0?r=-1:r=1,i=t-n,i>.5&&(n+=1,i=t-n),i=t*SF(i3*i),r*i3/(r3(i)*o3(t)));for(i=1;e>=3;)e-=1,i*=e;for(;e<0;){if(e>-1e-9)return a3(e,i);i/=e,e+=1}for(;e<2;){if(e<1e-9)return a3(e,i);i/=e,e+=1}return e===2?i:(e-=2,i*NF(e))}s3.exports=OF});var ke=m((lZ,l3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AF=u3();l3.exports=AF});var f3=m((cZ,c3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EF=14901161193847656e-24;c3.exports=EF});var yr=m((fZ,m3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IF=17976931348623157e292;m3.exports=IF});var p3=m((mZ,d3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _F=eval;d3.exports=_F});var g3=m((dZ,v3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FF=p3();function RF(){var e;try{FF('"use strict"; (function* () {})'),e=!0}catch{e=!1}return e}v3.exports=RF});var G0=m((pZ,h3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MF=g3();h3.exports=MF});var Fe=m((vZ,y3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PF=2220446049250313e-31;y3.exports=PF});var q3=m((gZ,b3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Zn=L(),TF=Fe(),CF=1e6;function DF(e,r){var t,n,i,o,a,s;if(s={},arguments.length>1&&(s=r),n=s.tolerance||TF,o=s.maxTerms||CF,a=s.initialValue||0,t=typeof e.next=="function",t===!0){for(i of e)if(a+=i,Zn(n*a)>=Zn(i)||--o===0)break}else do i=e(),a+=i;while(Zn(n*a)<Zn(i)&&--o);return a}b3.exports=DF});var N3=m((hZ,S3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var w3=L(),LF=Fe(),kF=1e6;function UF(e,r){var t,n,i,o,a;a={},arguments.length>1&&(a=r),t=a.tolerance||LF,i=a.maxTerms||kF,o=a.initialValue||0;do n=e(),o+=n;while(w3(t*o)<w3(n)&&--i);return o}S3.exports=UF});var ct=m((yZ,O3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $F=G0(),BF=q3(),HF=N3(),X0;$F()?X0=BF:X0=HF;O3.exports=X0});var E3=m((bZ,A3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function jF(e,r){var t=1,n=e,i=r;return o;function o(){var a=t;return t*=n/i,n-=1,a}}A3.exports=jF});var _3=m((qZ,I3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var WF=ct(),VF=E3();function GF(e,r){var t,n;return n=VF(e,r),t=WF(n),t}I3.exports=GF});var R3=m((wZ,F3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var XF=J();function QF(e,r){var t,n,i,o;if(i=XF(-r),n=i,n!==0)for(t=n,o=1;o<e;++o)t/=o,t*=r,n+=t;return n}F3.exports=QF});var P3=m((SZ,M3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function KF(e){return e===0?-.3250421072470015:-.3250421072470015+e*(-.02848174957559851+e*(-.005770270296489442+e*-23763016656650163e-21))}M3.exports=KF});var C3=m((NZ,T3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZF(e){return e===0?.39791722395915535:.39791722395915535+e*(.0650222499887673+e*(.005081306281875766+e*(.00013249473800432164+e*-3960228278775368e-21)))}T3.exports=ZF});var L3=m((OZ,D3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function JF(e){return e===0?.41485611868374833:.41485611868374833+e*(-.3722078760357013+e*(.31834661990116175+e*(-.11089469428239668+e*(.035478304325618236+e*-.002166375594868791))))}D3.exports=JF});var U3=m((AZ,k3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function YF(e){return e===0?.10642088040084423:.10642088040084423+e*(.540397917702171+e*(.07182865441419627+e*(.12617121980876164+e*(.01363708391202905+e*.011984499846799107))))}k3.exports=YF});var B3=m((EZ,$3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function zF(e){return e===0?-.6938585727071818:-.6938585727071818+e*(-10.558626225323291+e*(-62.375332450326006+e*(-162.39666946257347+e*(-184.60509290671104+e*(-81.2874355063066+e*-9.814329344169145)))))}$3.exports=zF});var j3=m((IZ,H3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function xF(e){return e===0?19.651271667439257:19.651271667439257+e*(137.65775414351904+e*(434.56587747522923+e*(645.3872717332679+e*(429.00814002756783+e*(108.63500554177944+e*(6.570249770319282+e*-.0604244152148581))))))}H3.exports=xF});var V3=m((_Z,W3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function eR(e){return e===0?-.799283237680523:-.799283237680523+e*(-17.757954917754752+e*(-160.63638485582192+e*(-637.5664433683896+e*(-1025.0951316110772+e*-483.5191916086514))))}W3.exports=eR});var X3=m((FZ,G3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function rR(e){return e===0?30.33806074348246:30.33806074348246+e*(325.7925129965739+e*(1536.729586084437+e*(3199.8582195085955+e*(2553.0504064331644+e*(474.52854120695537+e*-22.44095244658582)))))}G3.exports=rR});var J3=m((RZ,Z3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_erf.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var tR=T(),Q3=J(),nR=lt(),iR=Z(),oR=me(),aR=P3(),sR=C3(),uR=L3(),lR=U3(),cR=B3(),fR=j3(),mR=V3(),dR=X3(),Jn=1e-300,pR=13877787807814457e-33,K3=.8450629115104675,vR=.12837916709551256,gR=1,hR=-.0023621185607526594,yR=1,bR=-.009864944034847148,qR=1,wR=-.0098649429247001,SR=1;function NR(e){var r,t,n,i,o,a,s,u;if(tR(e))return NaN;if(e===iR)return 0;if(e===oR)return 2;if(e===0)return 1;if(e<0?(r=!0,t=-e):(r=!1,t=e),t<.84375)return t<pR?1-e:(n=e*e,i=vR+n*aR(n),o=gR+n*sR(n),a=i/o,e<.25?1-(e+e*a):(i=e*a,i+=e-.5,.5-i));if(t<1.25)return o=t-1,s=hR+o*uR(o),u=yR+o*lR(o),r?1+K3+s/u:1-K3-s/u;if(t<28){if(o=1/(t*t),t<2.857142857142857)i=bR+o*cR(o),o=qR+o*fR(o);else{if(e<-6)return 2-Jn;i=wR+o*mR(o),o=SR+o*dR(o)}return n=nR(t,0),i=Q3(-(n*n)-.5625)*Q3((n-t)*(n+t)+i/o),r?2-i/t:i/t}return r?2-Jn:Jn*Jn}Z3.exports=NR});var jt=m((MZ,Y3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OR=J3();Y3.exports=OR});var ed=m((PZ,x3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var AR=jt(),z3=$(),ER=J(),IR=xe();function _R(e,r){var t,n,i,o,a;if(o=AR(z3(r)),o!==0&&e>1){for(n=ER(-r)/z3(IR*r),n*=r,t=.5,n/=t,i=n,a=2;a<e;++a)n/=a-t,n*=r,i+=n;o+=i}return o}x3.exports=_R});var Hr=m((TZ,rd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FR=-708.3964185322641;rd.exports=FR});var od=m((CZ,id)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ft=J(),Yn=Y(),RR=B(),td=er(),nd=Hr();function MR(e,r){var t,n;return n=e*RR(r),r>=1?n<td&&-r>nd?t=Yn(r,e)*ft(-r):e>=1?t=Yn(r/ft(r/e),e):t=ft(n-r):n>nd?t=Yn(r,e)*ft(-r):r/e<td?t=Yn(r/ft(r/e),e):t=ft(n-r),t}id.exports=MR});var Q0=m((DZ,ad)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function PR(e,r){var t,n;if(n=e.length,n<2||r===0)return n===0?0:e[0];for(n-=1,t=e[n]*r+e[n-1],n-=2;n>=0;)t=t*r+e[n],n-=1;return t}ad.exports=PR});var ud=m((LZ,sd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TR=Function;sd.exports=TR});var cd=m((kZ,ld)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CR=ud();ld.exports=CR});var md=m((UZ,fd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DR=cd(),LR=Q0();function kR(e){var r,t,n,i;if(e.length>500)return o;if(r="return function evalpoly(x){",t=e.length,t===0)r+="return 0.0;";else if(t===1)r+="return "+e[0]+";";else{for(r+="if(x===0.0){return "+e[0]+";}",r+="return "+e[0],n=t-1,i=1;i<t;i++)r+="+x*",i<n&&(r+="("),r+=e[i];for(i=0;i<n-1;i++)r+=")";r+=";"}return r+="}",r+="//# sourceURL=evalpoly.factory.js",new DR(r)();function o(a){return LR(e,a)}}fd.exports=kR});var tr=m(($Z,pd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UR=ve(),dd=Q0(),$R=md();UR(dd,"factory",$R);pd.exports=dd});var gd=m((BZ,vd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_83_0/boost/math/special_functions/log1p.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2005-2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
*/function BR(e){var r=-e,t=-1,n=0;return i;function i(){return t*=r,n+=1,t/n}}vd.exports=BR});var yd=m((HZ,hd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_83_0/boost/math/special_functions/log1p.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2005-2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var HR=L(),jR=B(),WR=Fe(),VR=ct(),GR=gd();function XR(e){var r,t;return e<=-1?NaN:(t=HR(e),t>.95?jR(1+e)-e:t<WR?-e*e/2:(r={initialValue:-e},VR(GR(e),r)))}hd.exports=XR});var K0=m((jZ,bd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QR=yd();bd.exports=QR});var Z0=m((WZ,qd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KR=6.283185307179586;qd.exports=KR});var Sd=m((VZ,wd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZR(e){return e===0?-.3333333333333333:-.3333333333333333+e*(.08333333333333333+e*(-.014814814814814815+e*(.0011574074074074073+e*(.0003527336860670194+e*(-.0001787551440329218+e*(3919263178522438e-20+e*(-21854485106799924e-22+e*(-185406221071516e-20+e*(8296711340953087e-22+e*(-17665952736826078e-23+e*(6707853543401498e-24+e*(10261809784240309e-24+e*(-4382036018453353e-24+e*914769958223679e-24)))))))))))))}wd.exports=ZR});var Od=m((GZ,Nd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function JR(e){return e===0?-.001851851851851852:-.001851851851851852+e*(-.003472222222222222+e*(.0026455026455026454+e*(-.0009902263374485596+e*(.00020576131687242798+e*(-4018775720164609e-22+e*(-18098550334489977e-21+e*(764916091608111e-20+e*(-16120900894563446e-22+e*(4647127802807434e-24+e*(1378633446915721e-22+e*(-5752545603517705e-23+e*11951628599778148e-24)))))))))))}Nd.exports=JR});var Ed=m((XZ,Ad)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function YR(e){return e===0?.004133597883597883:.004133597883597883+e*(-.0026813271604938273+e*(.0007716049382716049+e*(20093878600823047e-22+e*(-.00010736653226365161+e*(52923448829120125e-21+e*(-12760635188618728e-21+e*(3423578734096138e-23+e*(13721957309062932e-22+e*(-6298992138380055e-22+e*14280614206064242e-23)))))))))}Ad.exports=YR});var _d=m((QZ,Id)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function zR(e){return e===0?.0006494341563786008:.0006494341563786008+e*(.00022947209362139917+e*(-.0004691894943952557+e*(.00026772063206283885+e*(-7561801671883977e-20+e*(-2396505113867297e-22+e*(11082654115347302e-21+e*(-56749528269915965e-22+e*14230900732435883e-22)))))))}Id.exports=zR});var Rd=m((KZ,Fd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function xR(e){return e===0?-.0008618882909167117:-.0008618882909167117+e*(.0007840392217200666+e*(-.0002990724803031902+e*(-14638452578843418e-22+e*(6641498215465122e-20+e*(-3968365047179435e-20+e*11375726970678419e-21)))))}Fd.exports=xR});var Pd=m((ZZ,Md)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function eM(e){return e===0?-.00033679855336635813:-.00033679855336635813+e*(-6972813758365858e-20+e*(.0002772753244959392+e*(-.00019932570516188847+e*(6797780477937208e-20+e*(1419062920643967e-22+e*(-13594048189768693e-21+e*(8018470256334202e-21+e*-2291481176508095e-21)))))))}Md.exports=eM});var Cd=m((JZ,Td)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function rM(e){return e===0?.0005313079364639922:.0005313079364639922+e*(-.0005921664373536939+e*(.0002708782096718045+e*(7902353232660328e-22+e*(-8153969367561969e-20+e*(561168275310625e-19+e*-18329116582843375e-21)))))}Td.exports=rM});var Ld=m((YZ,Dd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function tM(e){return e===0?.00034436760689237765:.00034436760689237765+e*(5171790908260592e-20+e*(-.00033493161081142234+e*(.0002812695154763237+e*-.00010976582244684731)))}Dd.exports=tM});var Ud=m((zZ,kd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function nM(e){return e===0?-.0006526239185953094:-.0006526239185953094+e*(.0008394987206720873+e*-.000438297098541721)}kd.exports=nM});var Bd=m((xZ,$d)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var iM=tr(),oM=K0(),aM=jt(),J0=$(),sM=J(),uM=Z0(),lM=Sd(),cM=Od(),fM=Ed(),mM=_d(),dM=Rd(),pM=Pd(),vM=Cd(),gM=Ld(),hM=Ud(),Re=[0,0,0,0,0,0,0,0,0,0];function yM(e,r){var t,n,i,o,a;return n=(r-e)/e,i=-oM(n),o=e*i,a=J0(2*i),r<e&&(a=-a),Re[0]=lM(a),Re[1]=cM(a),Re[2]=fM(a),Re[3]=mM(a),Re[4]=dM(a),Re[5]=pM(a),Re[6]=vM(a),Re[7]=gM(a),Re[8]=hM(a),Re[9]=-.0005967612901927463,t=iM(Re,1/e),t*=sM(-o)/J0(uM*e),r<e&&(t=-t),t+=aM(J0(o))/2,t}$d.exports=yM});var jd=m((eJ,Hd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function bM(e,r){var t=1,n=e,i=r;return o;function o(){var a=t;return n+=1,t*=i/n,a}}Hd.exports=bM});var Y0=m((rJ,Wd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var qM=ct(),wM=jd();function SM(e,r,t){var n,i;return t=t||0,i=wM(e,r),n=qM(i,{initialValue:t}),n}Wd.exports=SM});var Gd=m((tJ,Vd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function NM(e){var r,t,n;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(t=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),n=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,t=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),n=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),t/n)}Vd.exports=NM});var Qd=m((nJ,Xd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/lanczos.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var OM=Gd();Xd.exports=OM});var Wt=m((iJ,Kd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AM=Qd();Kd.exports=AM});var Jd=m((oJ,Zd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EM=Z();function IM(e){return e===0&&1/e===EM}Zd.exports=IM});var zd=m((aJ,Yd)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _M=Jd();Yd.exports=_M});var r6=m((sJ,e6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FM=zd(),xd=T(),z0=Z();function RM(e,r){return xd(e)||xd(r)?NaN:e===z0||r===z0?z0:e===r&&e===0?FM(e)?e:r:e>r?e:r}e6.exports=RM});var jr=m((uJ,t6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MM=r6();t6.exports=MM});var o6=m((lJ,i6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PM=U0(),n6=T(),x0=me();function TM(e,r){return n6(e)||n6(r)?NaN:e===x0||r===x0?x0:e===r&&e===0?PM(e)?e:r:e<r?e:r}i6.exports=TM});var br=m((cJ,a6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CM=o6();a6.exports=CM});var mt=m((fJ,s6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DM=10.900511;s6.exports=DM});var Wr=m((mJ,u6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LM=2.718281828459045;u6.exports=LM});var f6=m((dJ,c6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var kM=Wt(),UM=ut(),$M=ke(),BM=K0(),HM=$(),jM=L(),qr=J(),Vt=Y(),eo=jr(),ro=br(),l6=B(),WM=yr(),zn=er(),Gt=Hr(),to=mt(),VM=Wr();function GM(e,r){var t,n,i,o,a,s,u;return i=e+to-.5,u=(r-e-to+.5)/i,e<1?r<=Gt||e<1/WM?qr(e*l6(r)-r-UM(e)):Vt(r,e)*qr(-r)/$M(e):(jM(u*u*e)<=100&&e>150?(t=e*BM(u)+r*(.5-to)/i,t=qr(t)):(o=e*l6(r/i),a=e-r,ro(o,a)<=Gt||eo(o,a)>=zn?(n=a/e,ro(o,a)/2>Gt&&eo(o,a)/2<zn?(s=Vt(r/i,e/2)*qr(a/2),t=s*s):ro(o,a)/4>Gt&&eo(o,a)/4<zn&&r>e?(s=Vt(r/i,e/4)*qr(a/4),t=s*s,t*=t):n>Gt&&n<zn?t=Vt(r*qr(n)/i,e):t=qr(o+a)):t=Vt(r/i,e)*qr(a)),t*=HM(i/VM)/kM(e),t)}c6.exports=GM});var d6=m((pJ,m6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XM=.34657359027997264;m6.exports=XM});var v6=m((vJ,p6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function QM(e){return e===0?-.03333333333333313:-.03333333333333313+e*(.0015873015872548146+e*(-793650757867488e-19+e*(4008217827329362e-21+e*-20109921818362437e-23)))}p6.exports=QM});var w6=m((gJ,q6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FDLIBM]{@link http://www.netlib.org/fdlibm/s_expm1.c} and [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/s_expm1.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var KM=T(),g6=be(),no=ot(),ZM=Ct(),h6=Z(),JM=me(),y6=mr(),YM=d6(),zM=v6(),xM=709.782712893384,io=.6931471803691238,oo=19082149292705877e-26,b6=1.4426950408889634,eP=38.816242111356935,rP=1.0397207708399179;function tP(e){var r,t,n,i,o,a,s,u,l,c,f,d,p;if(e===h6||KM(e))return e;if(e===JM)return-1;if(e===0)return e;if(e<0?(n=!0,u=-e):(n=!1,u=e),u>=eP){if(n)return-1;if(u>=xM)return h6}if(a=g6(u)|0,u>YM)u<rP?n?(i=e+io,o=-oo,p=-1):(i=e-io,o=oo,p=1):(n?p=b6*e-.5:p=b6*e+.5,p|=0,f=p,i=e-f*io,o=f*oo),e=i-o,c=i-e-o;else{if(a<1016070144)return e;p=0}return r=.5*e,l=e*r,s=1+l*zM(l),f=3-s*r,d=l*((s-f)/(6-e*f)),p===0?e-(e*d-l):(t=ZM(y6+p<<20,0),d=e*(d-c)-c,d-=l,p===-1?.5*(e-d)-.5:p===1?e<-.25?-2*(d-(e+.5)):1+2*(e-d):p<=-2||p>56?(u=1-(d-e),p===1024?(i=g6(u)+(p<<20)|0,u=no(u,i)):u*=t,u-1):(f=1,p<20?(i=1072693248-(2097152>>p)|0,f=no(f,i),u=f-(d-e)):(i=y6-p<<20|0,f=no(f,i),u=e-(d+f),u+=1),u*=t,u))}q6.exports=tP});var Vr=m((hJ,S6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nP=w6();S6.exports=nP});var A6=m((yJ,O6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/powm1.hpp}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ao=T(),iP=Cr(),N6=L(),oP=Vr(),aP=B(),sP=Y(),uP=Mn();function lP(e,r){var t,n;if(ao(e)||ao(r))return NaN;if(r===0)return 0;if(e===0)return-1;if(e<0&&r%2===0&&(e=-e),e>0){if((N6(r*(e-1))<.5||N6(r)<.2)&&(n=aP(e)*r,n<.5))return oP(n)}else if(uP(r)!==r)return NaN;return t=sP(e,r)-1,iP(t)||ao(t)?NaN:t}O6.exports=lP});var I6=m((bJ,E6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cP=A6();E6.exports=cP});var F6=m((qJ,_6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function fP(e){return e===0?.6666666666666735:.6666666666666735+e*(.3999999999940942+e*(.2857142874366239+e*(.22222198432149784+e*(.1818357216161805+e*(.15313837699209373+e*.14798198605116586)))))}_6.exports=fP});var C6=m((wJ,T6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FDLIBM]{@link http://www.netlib.org/fdlibm/s_log1p.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var mP=T(),R6=be(),M6=ot(),dP=Z(),pP=me(),P6=mr(),vP=F6(),so=.6931471803691238,uo=19082149292705877e-26,gP=.41421356237309503,hP=-.2928932188134525,yP=1862645149230957e-24,bP=5551115123125783e-32,qP=9007199254740992,wP=.6666666666666666;function SP(e){var r,t,n,i,o,a,s,u,l,c;if(e<-1||mP(e))return NaN;if(e===-1)return pP;if(e===dP||e===0)return e;if(e<0?n=-e:n=e,c=1,n<gP){if(n<yP)return n<bP?e:e-e*e*.5;e>hP&&(c=0,i=e,t=1)}return c!==0&&(n<qP?(l=1+e,t=R6(l),c=(t>>20)-P6,c>0?o=1-(l-e):o=e-(l-1),o/=l):(l=e,t=R6(l),c=(t>>20)-P6,o=0),t&=1048575,t<434334?l=M6(l,t|1072693248):(c+=1,l=M6(l,t|1071644672),t=1048576-t>>2),i=l-1),r=.5*i*i,t===0?i===0?(o+=c*uo,c*so+o):(u=r*(1-wP*i),c*so-(u-(c*uo+o)-i)):(a=i/(2+i),s=a*a,u=s*vP(s),c===0?i-(r-a*(r+u)):c*so-(r-(a*(r+u)+(c*uo+o))-i))}T6.exports=SP});var Ue=m((SJ,D6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NP=C6();D6.exports=NP});var k6=m((NJ,L6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function OP(e){var r,t,n;return e===0?-.01803556856784494:(e<0?r=-e:r=e,r<=1?(t=-.01803556856784494+e*(.02512664961998968+e*(.049410315156753225+e*(.0172491608709614+e*(-.0002594535632054381+e*(-.0005410098692152044+e*(-3245886498259485e-20+e*0)))))),n=1+e*(1.962029871977952+e*(1.4801966942423133+e*(.5413914320717209+e*(.09885042511280101+e*(.008213096746488934+e*(.00022493629192211576+e*-22335276320861708e-23))))))):(e=1/e,t=0+e*(-3245886498259485e-20+e*(-.0005410098692152044+e*(-.0002594535632054381+e*(.0172491608709614+e*(.049410315156753225+e*(.02512664961998968+e*-.01803556856784494)))))),n=-22335276320861708e-23+e*(.00022493629192211576+e*(.008213096746488934+e*(.09885042511280101+e*(.5413914320717209+e*(1.4801966942423133+e*(1.962029871977952+e*1))))))),t/n)}L6.exports=OP});var $6=m((OJ,U6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function AP(e){var r,t,n;return e===0?.04906224540690395:(e<0?r=-e:r=e,r<=1?(t=.04906224540690395+e*(-.09691175301595212+e*(-.4149833583594954+e*(-.4065671242119384+e*(-.1584135863906922+e*(-.024014982064857155+e*-.0010034668769627955))))),n=1+e*(3.0234982984646304+e*(3.4873958536072385+e*(1.9141558827442668+e*(.5071377386143635+e*(.05770397226904519+e*.001957681026011072)))))):(e=1/e,t=-.0010034668769627955+e*(-.024014982064857155+e*(-.1584135863906922+e*(-.4065671242119384+e*(-.4149833583594954+e*(-.09691175301595212+e*.04906224540690395))))),n=.001957681026011072+e*(.05770397226904519+e*(.5071377386143635+e*(1.9141558827442668+e*(3.4873958536072385+e*(3.0234982984646304+e*1)))))),t/n)}U6.exports=AP});var H6=m((AJ,B6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function EP(e){var r,t,n;return e===0?-.029232972183027003:(e<0?r=-e:r=e,r<=1?(t=-.029232972183027003+e*(.14421626775719232+e*(-.14244039073863127+e*(.05428096940550536+e*(-.008505359768683364+e*(.0004311713426792973+e*0))))),n=1+e*(-1.5016935605448505+e*(.846973248876495+e*(-.22009515181499575+e*(.02558279715597587+e*(-.0010066679553914337+e*-8271935218912905e-22)))))):(e=1/e,t=0+e*(.0004311713426792973+e*(-.008505359768683364+e*(.05428096940550536+e*(-.14244039073863127+e*(.14421626775719232+e*-.029232972183027003))))),n=-8271935218912905e-22+e*(-.0010066679553914337+e*(.02558279715597587+e*(-.22009515181499575+e*(.846973248876495+e*(-1.5016935605448505+e*1)))))),t/n)}B6.exports=EP});var W6=m((EJ,j6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/detail/lgamma_small.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var lo=B(),IP=Fe(),_P=k6(),FP=$6(),RP=H6(),MP=.15896368026733398,PP=.5281534194946289,TP=.45201730728149414;function CP(e,r,t){var n,i,o,a;if(e<IP)return-lo(e);if(r===0||t===0)return 0;if(i=0,e>2){if(e>=3){do e-=1,t-=1,i+=lo(e);while(e>=3);t=e-2}return o=t*(e+1),a=_P(t),i+=o*MP+o*a,i}return e<1&&(i+=-lo(e),t=r,r=e,e+=1),e<=1.5?(o=FP(r),n=r*t,i+=n*PP+n*o,i):(o=t*r,a=RP(-t),i+=o*TP+o*a,i)}j6.exports=CP});var K6=m((IJ,Q6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var V6=ke(),G6=Vr(),DP=Ue(),LP=T(),X6=W6();function kP(e){return LP(e)?NaN:e<0?e<-.5?V6(1+e)-1:G6(-DP(e)+X6(e+2,e+1,e)):e<2?G6(X6(e+1,e,e-1)):V6(1+e)-1}Q6.exports=kP});var J6=m((_J,Z6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UP=K6();Z6.exports=UP});var z6=m((FJ,Y6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function $P(e,r){var t,n,i,o;return t=-r,r=-r,n=e+1,i=1,a;function a(){return o=t/n,t*=r,i+=1,t/=i,n+=1,o}}Y6.exports=$P});var ep=m((RJ,x6)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var BP=I6(),HP=ct(),jP=J6(),WP=z6();function VP(e,r,t){var n,i,o,a,s;return i=jP(e),o=(i+1)/e,a=BP(r,e),i-=a,i/=e,s=WP(e,r),a+=1,n=t?o:0,i=-a*HP(s,{initialValue:(n-i)/a}),t&&(i=-i),[i,o]}x6.exports=VP});var Xt=m((MJ,rp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GP=11754943508222875e-54;rp.exports=GP});var np=m((PJ,tp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xn=L(),$e=Xt(),XP=Fe(),QP=1e6;function KP(e,r,t){var n,i,o,a,s,u,l;if(n=typeof e.next=="function",l=n?e.next().value:e(),a=l[1],o=l[0],a===0&&(a=$e),s=a,u=0,n===!0)do l=e.next().value,l&&(u=l[1]+l[0]*u,u===0&&(u=$e),s=l[1]+l[0]/s,s===0&&(s=$e),u=1/u,i=s*u,a*=i);while(xn(i-1)>r&&--t);else do l=e(),l&&(u=l[1]+l[0]*u,u===0&&(u=$e),s=l[1]+l[0]/s,s===0&&(s=$e),u=1/u,i=s*u,a*=i);while(l&&xn(i-1)>r&&--t);return o/a}function ZP(e,r,t){var n,i,o,a,s,u;if(n=typeof e.next=="function",u=n?e.next().value:e(),o=u[1],o===0&&(o=$e),a=o,s=0,n===!0)do u=e.next().value,u&&(s=u[1]+u[0]*s,s===0&&(s=$e),a=u[1]+u[0]/a,a===0&&(a=$e),s=1/s,i=a*s,o*=i);while(u&&xn(i-1)>r&&--t);else do u=e(),u&&(s=u[1]+u[0]*s,s===0&&(s=$e),a=u[1]+u[0]/a,a===0&&(a=$e),s=1/s,i=a*s,o*=i);while(u&&xn(i-1)>r&&--t);return o}function JP(e,r){var t,n,i;return n={},arguments.length>1&&(n=r),t=n.maxIter||QP,i=n.tolerance||XP,n.keep?ZP(e,i,t):KP(e,i,t)}tp.exports=JP});var ap=m((TJ,op)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ip=L(),YP=Fe(),dt=Xt(),zP=1e6;function xP(e,r,t){var n,i,o,a,s,u;u=e(),s=u[1],i=u[0],s===0&&(s=dt),o=s,a=0;do u=e(),u&&(a=u[1]+u[0]*a,a===0&&(a=dt),o=u[1]+u[0]/o,o===0&&(o=dt),a=1/a,n=o*a,s*=n);while(u&&ip(n-1)>r&&--t);return i/s}function eT(e,r,t){var n,i,o,a,s;s=e(),a=s[1],a===0&&(a=dt),i=a,o=0;do s=e(),s&&(o=s[1]+s[0]*o,o===0&&(o=dt),i=s[1]+s[0]/i,i===0&&(i=dt),o=1/o,n=i*o,a*=n);while(s&&ip(n-1)>r&&--t);return a}function rT(e,r){var t,n,i;return n={},arguments.length>1&&(n=r),i=n.tolerance||YP,t=n.maxIter||zP,n.keep?eT(e,i,t):xP(e,i,t)}op.exports=rT});var fo=m((CJ,sp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tT=G0(),nT=np(),iT=ap(),co;tT()?co=nT:co=iT;sp.exports=co});var lp=m((DJ,up)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function oT(e,r){var t=r-e+1,n=e,i=0;return o;function o(){return i+=1,t+=2,[i*(n-i),t]}}up.exports=oT});var mo=m((LJ,cp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var aT=fo(),sT=lp();function uT(e,r){var t=sT(e,r);return 1/(r-e+1+aT(t))}cp.exports=uT});var pp=m((kJ,dp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var lT=_e(),Qt=ke(),po=L(),fp=Y(),cT=B(),fT=f3(),mp=yr(),mT=er(),dT=_3(),pT=R3(),vT=ed(),vo=od(),gT=Bd(),hT=Y0(),go=f6(),yT=ep(),bT=mo();function qT(e,r,t,n){var i,o,a,s,u,l,c,f,d,p,v,g,y,h;switch(c=0,f=n,l=r<30&&r<=e+1&&e<mT,l?(y=lT(r),d=y===r,a=d?!1:po(y-r)===.5):(d=!1,a=!1),d&&e>.6?(f=!f,o=0):a&&e>.2?(f=!f,o=1):e<fT&&r>1?o=6:e>1e3&&(r<e||po(r-50)/e<1)?(f=!f,o=7):e<.5?-.4/cT(e)<r?o=2:o=3:e<1.1?e*.75<r?o=2:o=3:(u=!1,t&&r>20&&(p=po((e-r)/r),r>200?20/r>p*p&&(u=!0):p<.4&&(u=!0)),u?o=5:e-1/(3*e)<r?o=2:(o=4,f=!f)),o){case 0:c=pT(r,e),t===!1&&(c*=Qt(r));break;case 1:c=vT(r,e),t===!1&&(c*=Qt(r));break;case 2:c=t?go(r,e):vo(r,e),c!==0&&(s=0,i=!1,f&&(s=t?1:Qt(r),t||c>=1||mp*c>s?(s/=c,t||r<1||mp/r>s?(s*=-r,i=!0):s=0):s=0),c*=hT(r,e,s)/r,i&&(f=!1,c=-c));break;case 3:f=!f,v=yT(r,e,f),c=v[0],h=v[1],f=!1,t&&(c/=h);break;case 4:c=t?go(r,e):vo(r,e),c!==0&&(c*=bT(r,e));break;case 5:c=gT(r,e),e>=r&&(f=!f);break;case 6:c=t?fp(e,r)/Qt(r+1):fp(e,r)/r,c*=1-r*e/(r+1);break;case 7:c=t?go(r,e):vo(r,e),c/=e,c!==0&&(c*=dT(r,e));break}return t&&c>1&&(c=1),f&&(g=t?1:Qt(r),c=g-c),c}dp.exports=qT});var yp=m((UJ,hp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var wT=ut(),ST=J(),Be=B(),NT=$t(),OT=er(),AT=Z(),ET=Bt(),vp=pp(),gp=Y0(),IT=mo();function _T(e,r,t,n){var i,o,a,s;return e<0||r<=0?NaN:(i=t===void 0?!0:t,a=n,r>=ET&&!i?(a&&r*4<e?(s=r*Be(e)-e,s+=Be(IT(r,e))):!a&&r>4*e?(s=r*Be(e)-e,o=0,s+=Be(gp(r,e,o)/r)):(s=vp(e,r,!0,a),s===0?a?(s=1+1/(12*r)+1/(288*r*r),s=Be(s)-r+(r-.5)*Be(r),s+=Be(NT)):(s=r*Be(e)-e,o=0,s+=Be(gp(r,e,o)/r)):s=Be(s)+wT(r)),s>OT?AT:ST(s)):vp(e,r,i,a))}hp.exports=_T});var Kt=m(($J,bp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FT=yp();bp.exports=FT});var wp=m((BJ,qp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RT=Kt(),ho=T(),MT=Z();function PT(e,r,t){return ho(e)||ho(r)||ho(t)||r<0||t<=0?NaN:r===0?e<0?0:1:e<=0?0:e===MT?1:RT(e*t,r)}qp.exports=PT});var Np=m((HJ,Sp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function TT(e){return r;function r(){return e}}Sp.exports=TT});var nr=m((jJ,Op)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CT=Np();Op.exports=CT});var Ip=m((WJ,Ep)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ap=T();function DT(e,r){return Ap(e)||Ap(r)?NaN:e<r?0:1}Ep.exports=DT});var Rp=m((VJ,Fp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LT=nr(),_p=T();function kT(e){if(_p(e))return LT(NaN);return r;function r(t){return _p(t)?NaN:t<e?0:1}}Fp.exports=kT});var yo=m((GJ,Pp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UT=ve(),Mp=Ip(),$T=Rp();UT(Mp,"factory",$T);Pp.exports=Mp});var Dp=m((XJ,Cp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BT=nr(),HT=yo().factory,jT=Kt(),Tp=T(),WT=Z();function VT(e,r){if(Tp(e)||Tp(r)||e<0||r<=0)return BT(NaN);if(e===0)return HT(0);return t;function t(n){return n<=0?0:n===WT?1:jT(n*r,e)}}Cp.exports=VT});var bo=m((QJ,kp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GT=ve(),Lp=wp(),XT=Dp();GT(Lp,"factory",XT);kp.exports=Lp});var $p=m((KJ,Up)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QT=bo();function KT(e,r){return QT(e,r/2,.5)}Up.exports=KT});var Hp=m((ZJ,Bp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZT=bo().factory;function JT(e){return ZT(e/2,.5)}Bp.exports=JT});var Vp=m((JJ,Wp)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YT=ve(),jp=$p(),zT=Hp();YT(jp,"factory",zT);Wp.exports=jp});var Xp=m((YJ,Gp)=>{var Zt=1e3,Jt=Zt*60,Yt=Jt*60,zt=Yt*24,xT=zt*365.25;Gp.exports=function(e,r){r=r||{};var t=typeof e;if(t==="string"&&e.length>0)return eC(e);if(t==="number"&&isNaN(e)===!1)return r.long?tC(e):rC(e);throw new Error("val is not a non-empty string or a valid number. val="+JSON.stringify(e))};function eC(e){if(e=String(e),!(e.length>100)){var r=/^((?:\d+)?\.?\d+) *(milliseconds?|msecs?|ms|seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|h|days?|d|years?|yrs?|y)?$/i.exec(e);if(r){var t=parseFloat(r[1]),n=(r[2]||"ms").toLowerCase();switch(n){case"years":case"year":case"yrs":case"yr":case"y":return t*xT;case"days":case"day":case"d":return t*zt;case"hours":case"hour":case"hrs":case"hr":case"h":return t*Yt;case"minutes":case"minute":case"mins":case"min":case"m":return t*Jt;case"seconds":case"second":case"secs":case"sec":case"s":return t*Zt;case"milliseconds":case"millisecond":case"msecs":case"msec":case"ms":return t;default:return}}}}function rC(e){return e>=zt?Math.round(e/zt)+"d":e>=Yt?Math.round(e/Yt)+"h":e>=Jt?Math.round(e/Jt)+"m":e>=Zt?Math.round(e/Zt)+"s":e+"ms"}function tC(e){return ei(e,zt,"day")||ei(e,Yt,"hour")||ei(e,Jt,"minute")||ei(e,Zt,"second")||e+" ms"}function ei(e,r,t){if(!(e<r))return e<r*1.5?Math.floor(e/r)+" "+t:Math.ceil(e/r)+" "+t+"s"}});var So=m((U,Qp)=>{U=Qp.exports=wo.debug=wo.default=wo;U.coerce=sC;U.disable=oC;U.enable=iC;U.enabled=aC;U.humanize=Xp();U.names=[];U.skips=[];U.formatters={};var qo;function nC(e){var r=0,t;for(t in e)r=(r<<5)-r+e.charCodeAt(t),r|=0;return U.colors[Math.abs(r)%U.colors.length]}function wo(e){function r(){if(r.enabled){var t=r,n=+new Date,i=n-(qo||n);t.diff=i,t.prev=qo,t.curr=n,qo=n;for(var o=new Array(arguments.length),a=0;a<o.length;a++)o[a]=arguments[a];o[0]=U.coerce(o[0]),typeof o[0]!="string"&&o.unshift("%O");var s=0;o[0]=o[0].replace(/%([a-zA-Z%])/g,function(l,c){if(l==="%%")return l;s++;var f=U.formatters[c];if(typeof f=="function"){var d=o[s];l=f.call(t,d),o.splice(s,1),s--}return l}),U.formatArgs.call(t,o);var u=r.log||U.log||console.log.bind(console);u.apply(t,o)}}return r.namespace=e,r.enabled=U.enabled(e),r.useColors=U.useColors(),r.color=nC(e),typeof U.init=="function"&&U.init(r),r}function iC(e){U.save(e),U.names=[],U.skips=[];for(var r=(typeof e=="string"?e:"").split(/[\s,]+/),t=r.length,n=0;n<t;n++)r[n]&&(e=r[n].replace(/\*/g,".*?"),e[0]==="-"?U.skips.push(new RegExp("^"+e.substr(1)+"$")):U.names.push(new RegExp("^"+e+"$")))}function oC(){U.enable("")}function aC(e){var r,t;for(r=0,t=U.skips.length;r<t;r++)if(U.skips[r].test(e))return!1;for(r=0,t=U.names.length;r<t;r++)if(U.names[r].test(e))return!0;return!1}function sC(e){return e instanceof Error?e.stack||e.message:e}});var Jp=m((ge,Zp)=>{ge=Zp.exports=So();ge.log=cC;ge.formatArgs=lC;ge.save=fC;ge.load=Kp;ge.useColors=uC;ge.storage=typeof chrome<"u"&&typeof chrome.storage<"u"?chrome.storage.local:mC();ge.colors=["lightseagreen","forestgreen","goldenrod","dodgerblue","darkorchid","crimson"];function uC(){return typeof window<"u"&&window.process&&window.process.type==="renderer"?!0:typeof document<"u"&&document.documentElement&&document.documentElement.style&&document.documentElement.style.WebkitAppearance||typeof window<"u"&&window.console&&(window.console.firebug||window.console.exception&&window.console.table)||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/firefox\/(\d+)/)&&parseInt(RegExp.$1,10)>=31||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/applewebkit\/(\d+)/)}ge.formatters.j=function(e){try{return JSON.stringify(e)}catch(r){return"[UnexpectedJSONParseError]: "+r.message}};function lC(e){var r=this.useColors;if(e[0]=(r?"%c":"")+this.namespace+(r?" %c":" ")+e[0]+(r?"%c ":" ")+"+"+ge.humanize(this.diff),!!r){var t="color: "+this.color;e.splice(1,0,t,"color: inherit");var n=0,i=0;e[0].replace(/%[a-zA-Z%]/g,function(o){o!=="%%"&&(n++,o==="%c"&&(i=n))}),e.splice(i,0,t)}}function cC(){return typeof console=="object"&&console.log&&Function.prototype.apply.call(console.log,console,arguments)}function fC(e){try{e==null?ge.storage.removeItem("debug"):ge.storage.debug=e}catch{}}function Kp(){var e;try{e=ge.storage.debug}catch{}return!e&&typeof process<"u"&&"env"in process&&(e=process.env.DEBUG),e}ge.enable(Kp());function mC(){try{return window.localStorage}catch{}}});var e4=m((ie,xp)=>{var Yp=hn("tty"),xt=hn("util");ie=xp.exports=So();ie.init=bC;ie.log=gC;ie.formatArgs=vC;ie.save=hC;ie.load=zp;ie.useColors=pC;ie.colors=[6,2,3,4,5,1];ie.inspectOpts=Object.keys(process.env).filter(function(e){return/^debug_/i.test(e)}).reduce(function(e,r){var t=r.substring(6).toLowerCase().replace(/_([a-z])/g,function(i,o){return o.toUpperCase()}),n=process.env[r];return/^(yes|on|true|enabled)$/i.test(n)?n=!0:/^(no|off|false|disabled)$/i.test(n)?n=!1:n==="null"?n=null:n=Number(n),e[t]=n,e},{});var pt=parseInt(process.env.DEBUG_FD,10)||2;pt!==1&&pt!==2&&xt.deprecate(function(){},"except for stderr(2) and stdout(1), any other usage of DEBUG_FD is deprecated. Override debug.log if you want to use a different log function (https://git.io/debug_fd)")();var dC=pt===1?process.stdout:pt===2?process.stderr:yC(pt);function pC(){return"colors"in ie.inspectOpts?!!ie.inspectOpts.colors:Yp.isatty(pt)}ie.formatters.o=function(e){return this.inspectOpts.colors=this.useColors,xt.inspect(e,this.inspectOpts).split(`
`).map(function(r){return r.trim()}).join(" ")};ie.formatters.O=function(e){return this.inspectOpts.colors=this.useColors,xt.inspect(e,this.inspectOpts)};function vC(e){var r=this.namespace,t=this.useColors;if(t){var n=this.color,i="  \x1B[3"+n+";1m"+r+" \x1B[0m";e[0]=i+e[0].split(`
`).join(`
`+i),e.push("\x1B[3"+n+"m+"+ie.humanize(this.diff)+"\x1B[0m")}else e[0]=new Date().toUTCString()+" "+r+" "+e[0]}function gC(){return dC.write(xt.format.apply(xt,arguments)+`
`)}function hC(e){e==null?delete process.env.DEBUG:process.env.DEBUG=e}function zp(){return process.env.DEBUG}function yC(e){var r,t=process.binding("tty_wrap");switch(t.guessHandleType(e)){case"TTY":r=new Yp.WriteStream(e),r._type="tty",r._handle&&r._handle.unref&&r._handle.unref();break;case"FILE":var n=hn("fs");r=new n.SyncWriteStream(e,{autoClose:!1}),r._type="fs";break;case"PIPE":case"TCP":var i=hn("net");r=new i.Socket({fd:e,readable:!1,writable:!0}),r.readable=!1,r.read=null,r._type="pipe",r._handle&&r._handle.unref&&r._handle.unref();break;default:throw new Error("Implement me. Unknown stream file type!")}return r.fd=e,r._isStdio=!0,r}function bC(e){e.inspectOpts={};for(var r=Object.keys(ie.inspectOpts),t=0;t<r.length;t++)e.inspectOpts[r[t]]=ie.inspectOpts[r[t]]}ie.enable(zp())});var Oo=m((zJ,No)=>{typeof process<"u"&&process.type==="renderer"?No.exports=Jp():No.exports=e4()});var t4=m((xJ,r4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function qC(e){var r,t,n;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(t=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),n=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,t=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),n=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),t/n)}r4.exports=qC});var i4=m((eY,n4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function wC(e){var r,t,n;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(t=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),n=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,t=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),n=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),t/n)}n4.exports=wC});var a4=m((rY,o4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function SC(e){var r,t,n;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(t=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),n=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,t=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),n=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),t/n)}o4.exports=SC});var u4=m((tY,s4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function NC(e){var r,t,n;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(t=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),n=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,t=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),n=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),t/n)}s4.exports=NC});var c4=m((nY,l4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function OC(e){var r,t,n;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(t=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),n=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,t=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),n=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),t/n)}l4.exports=OC});var p4=m((iY,d4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_81_0/boost/math/special_functions/detail/erf_inv.hpp}. This implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var AC=T(),f4=$(),m4=B(),EC=Z(),IC=me(),_C=t4(),FC=i4(),RC=a4(),MC=u4(),PC=c4(),TC=.08913147449493408,CC=2.249481201171875,DC=.807220458984375,LC=.9399557113647461,kC=.9836282730102539;function UC(e){var r,t,n,i,o;return AC(e)?NaN:e===0?EC:e===2?IC:e===1?0:e>2||e<0?NaN:(e>1?(r=-1,n=2-e):(r=1,n=e),e=1-n,e<=.5?(i=e*(e+10),o=_C(e),r*(i*TC+i*o)):n>=.25?(i=f4(-2*m4(n)),n-=.25,o=FC(n),r*(i/(CC+o))):(n=f4(-m4(n)),n<3?(t=n-1.125,o=RC(t),r*(DC*n+o*n)):n<6?(t=n-3,o=MC(t),r*(LC*n+o*n)):(t=n-6,o=PC(t),r*(kC*n+o*n))))}d4.exports=UC});var vt=m((oY,v4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $C=p4();v4.exports=$C});var en=m((aY,g4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BC=34028234663852886e22;g4.exports=BC});var w4=m((sY,q4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HC=Oo(),h4=Kt(),jC=L(),WC=J(),y4=B(),VC=en(),b4=HC("gammaincinv:higher_newton");function GC(e,r,t,n,i,o,a,s){var u,l,c,f,d,p,v,g,y,h,q,b,N,O;O=e,q=1,b=1,p=r*r,l=e;do{if(O=e,v=O*O,t===0){if(u=(1-r)*y4(O)+O+o,u>y4(VC))return b4("Warning: overflow problems in one or more steps of the computation. The initial approximation to the root is returned."),l;N=WC(u)}else N=-a*O;s?(g=h4(O,r,!0,!1),c=-N*(g-n)):(y=h4(O,r,!0,!0),c=N*(y-i)),N=c,n>1e-120||b>1?(f=.5*(O-r+1)/O,d=(2*v-4*O*r+4*O+2*p-3*r+1)/v,d/=6,e=O+N*(1+N*(f+N*d))):e=O+N,q=jC(O/e-1),b+=1,O=e,O<0&&(O=l,b=100)}while(q>2e-14&&b<35);return(q>2e-14||b>99)&&b4("Warning: the number of iterations in the Newton method reached the upper limit N=35. The last value obtained for the root is given as output."),h=O||0,h}q4.exports=GC});var N4=m((uY,S4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function XC(e){return e===0?0:0+e*(1+e*(1+e*(1.5+e*(2.6666666666666665+e*(5.208333333333333+e*10.8)))))}S4.exports=XC});var A4=m((lY,O4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function QC(e){return e===0?1:1+e*(1+e*(.3333333333333333+e*(.027777777777777776+e*(-.003703703703703704+e*(.0002314814814814815+e*5878894767783657e-20)))))}O4.exports=QC});var Ao=m((cY,I4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KC=L(),ZC=J(),E4=B(),JC=tr(),YC=N4(),zC=A4(),xC=1e-8,eD=.08333333333333333,rD=.008333333333333333,gt=[1,0,0,0,0,0];function tD(e){var r,t,n,i,o,a,s,u,l;if(l=e*e*.5,e===0?o=0:e<-1?(u=ZC(-1-l),o=YC(u)):e<1?(u=e,o=zC(u)):(u=11+l,a=E4(u),o=u+a,u=1/u,r=a*a,t=r*a,n=t*a,i=n*a,gt[1]=(2-a)*.5,gt[2]=(-9*a+6+2*r)/6,gt[3]=-(3*t+36*a-22*r-12)*eD,gt[4]=(60+350*r-300*a-125*t+12*n)/60,gt[5]=-(-120-274*n+900*a-1700*r+1125*t+20*i)*rD,o+=a*u*JC(gt,u)),u=1,e>-3.5&&e<-.03||e>.03&&e<40){u=1,s=o;do o=s*(l+E4(s))/(s-1),u=KC(s/o-1),s=o;while(u>xC)}return o}I4.exports=tD});var F4=m((fY,_4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nD=.9189385332046728;_4.exports=nD});var M4=m((mY,R4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iD=[1.9963790515900766,-.0017971032528832887,13129285796384672e-21,-2340875228178749e-22,72291210671127e-22,-3280997607821e-22,19875070901e-21,-1509214183e-21,1375340084e-22,-145728923e-22,17532367e-22,-2351465e-22,346551e-22,-55471e-22,9548e-22,-1748e-22,332e-22,-58e-22];function oD(e,r){var t,n,i,o,a;n=0,i=0,t=r+r,a=e;do o=i,i=n,n=t*i-o+iD[a],a-=1;while(a>=0);return(n-o)/2}R4.exports=oD});var T4=m((dY,P4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function aD(e){return e===0?.025721014990011306:.025721014990011306+e*(.08247596616699963+e*(-.0025328157302663564+e*(.0006099292666946337+e*(-.00033543297638406+e*.000250505279903))))}P4.exports=aD});var D4=m((pY,C4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function sD(e){return e===0?.08333333333333333:.08333333333333333+e*(-.002777777777777778+e*(.0007936507936507937+e*-.0005952380952380953))}C4.exports=sD});var k4=m((vY,L4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Eo=ut(),ri=B(),Io=F4(),uD=Xt(),lD=en(),cD=M4(),fD=T4(),mD=D4(),dD=.30865217988013566;function pD(e){var r;return e<uD?lD:e<1?Eo(e+1)-(e+.5)*ri(e)+e-Io:e<2?Eo(e)-(e-.5)*ri(e)+e-Io:e<3?Eo(e-1)-(e-.5)*ri(e)+e-Io+ri(e-1):e<12?(r=18/(e*e)-1,cD(17,r)/(12*e)):(r=1/(e*e),e<1e3?fD(r)/(dD+r)/e:mD(r)/e)}L4.exports=pD});var B4=m((gY,$4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var U4=J(),vD=ke(),gD=B(),hD=en(),yD=$t(),bD=k4();function qD(e){return e>=3?U4(bD(e)):e>0?vD(e)/(U4(-e+(e-.5)*gD(e))*yD):hD}$4.exports=qD});var j4=m((hY,H4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function wD(e){var r,t,n;return e===0?-.3333333333438:(e<0?r=-e:r=e,r<=1?(t=-.3333333333438+e*(-.2070740359969+e*(-.05041806657154+e*(-.004923635739372+e*-4293658292782e-17))),n=1+e*(.7045554412463+e*(.2118190062224+e*(.03048648397436+e*.001605037988091)))):(e=1/e,t=-4293658292782e-17+e*(-.004923635739372+e*(-.05041806657154+e*(-.2070740359969+e*-.3333333333438))),n=.001605037988091+e*(.03048648397436+e*(.2118190062224+e*(.7045554412463+e*1)))),t/n)}H4.exports=wD});var V4=m((yY,W4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SD=L(),ND=B(),OD=Ao(),AD=j4();function ED(e){var r;return SD(e)<1?AD(e):(r=OD(e),ND(e/(r-1))/e)}W4.exports=ED});var X4=m((bY,G4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ID(e){var r,t,n;return e===0?-.0172847633523:(e<0?r=-e:r=e,r<=1?(t=-.0172847633523+e*(-.0159372646475+e*(-.00464910887221+e*(-.00060683488776+e*-614830384279e-17))),n=1+e*(.764050615669+e*(.297143406325+e*(.0579490176079+e*.00574558524851)))):(e=1/e,t=-614830384279e-17+e*(-.00060683488776+e*(-.00464910887221+e*(-.0159372646475+e*-.0172847633523))),n=.00574558524851+e*(.0579490176079+e*(.297143406325+e*(.764050615669+e*1)))),t/n)}G4.exports=ID});var K4=m((qY,Q4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _D(e){var r,t,n;return e===0?-.0172839517431:(e<0?r=-e:r=e,r<=1?(t=-.0172839517431+e*(-.0146362417966+e*(-.00357406772616+e*(-.000391032032692+e*249634036069e-17))),n=1+e*(.690560400696+e*(.249962384741+e*(.0443843438769+e*.00424073217211)))):(e=1/e,t=249634036069e-17+e*(-.000391032032692+e*(-.00357406772616+e*(-.0146362417966+e*-.0172839517431))),n=.00424073217211+e*(.0443843438769+e*(.249962384741+e*(.690560400696+e*1)))),t/n)}Q4.exports=_D});var J4=m((wY,Z4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function FD(e){var r,t,n;return e===0?.99994466948:(e<0?r=-e:r=e,r<=1?(t=.99994466948+e*(104.649839762+e*(857.204033806+e*(731.901559577+e*45.5174411671))),n=1+e*(104.526456943+e*(823.313447808+e*(3119.93802124+e*3970.03311219)))):(e=1/e,t=45.5174411671+e*(731.901559577+e*(857.204033806+e*(104.649839762+e*.99994466948))),n=3970.03311219+e*(3119.93802124+e*(823.313447808+e*(104.526456943+e*1)))),t/n)}Z4.exports=FD});var z4=m((SY,Y4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RD=B(),MD=X4(),PD=K4(),TD=J4();function CD(e){var r,t;return e<-5?(t=e*e,r=RD(-e),(12-t-6*(r*r))/(12*t*e)):e<-2?MD(e):e<2?PD(e):e<1e3?(t=1/e,TD(e)/(-12*e)):-1/(12*e)}Y4.exports=CD});var e5=m((NY,x4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function DD(e){var r,t,n;return e===0?.0495346498136:(e<0?r=-e:r=e,r<=1?(t=.0495346498136+e*(.0299521337141+e*(.00688296911516+e*(.000512634846317+e*-201411722031e-16))),n=1+e*(.759803615283+e*(.261547111595+e*(.0464854522477+e*.00403751193496)))):(e=1/e,t=-201411722031e-16+e*(.000512634846317+e*(.00688296911516+e*(.0299521337141+e*.0495346498136))),n=.00403751193496+e*(.0464854522477+e*(.261547111595+e*(.759803615283+e*1)))),t/n)}x4.exports=DD});var t5=m((OY,r5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function LD(e){var r,t,n;return e===0?.00452313583942:(e<0?r=-e:r=e,r<=1?(t=.00452313583942+e*(.00120744920113+e*(-789724156582e-16+e*(-504476066942e-16+e*-535770949796e-17))),n=1+e*(.912203410349+e*(.405368773071+e*(.0901638932349+e*.00948935714996)))):(e=1/e,t=-535770949796e-17+e*(-504476066942e-16+e*(-789724156582e-16+e*(.00120744920113+e*.00452313583942))),n=.00948935714996+e*(.0901638932349+e*(.405368773071+e*(.912203410349+e*1)))),t/n)}r5.exports=LD});var i5=m((AY,n5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function kD(e){var r,t,n;return e===0?.00439937562904:(e<0?r=-e:r=e,r<=1?(t=.00439937562904+e*(.000487225670639+e*(-.000128470657374+e*(529110969589e-17+e*15716677175e-17))),n=1+e*(.794435257415+e*(.333094721709+e*(.0703527806143+e*.00806110846078)))):(e=1/e,t=15716677175e-17+e*(529110969589e-17+e*(-.000128470657374+e*(.000487225670639+e*.00439937562904))),n=.00806110846078+e*(.0703527806143+e*(.333094721709+e*(.794435257415+e*1)))),t/n)}n5.exports=kD});var a5=m((EY,o5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function UD(e){var r,t,n;return e===0?-.0011481191232:(e<0?r=-e:r=e,r<=1?(t=-.0011481191232+e*(-.112850923276+e*(1.51623048511+e*(-.218472031183+e*.0730002451555))),n=1+e*(14.2482206905+e*(69.7360396285+e*(218.938950816+e*277.067027185)))):(e=1/e,t=.0730002451555+e*(-.218472031183+e*(1.51623048511+e*(-.112850923276+e*-.0011481191232))),n=277.067027185+e*(218.938950816+e*(69.7360396285+e*(14.2482206905+e*1)))),t/n)}o5.exports=UD});var u5=m((IY,s5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function $D(e){var r,t,n;return e===0?-.000145727889667:(e<0?r=-e:r=e,r<=1?(t=-.000145727889667+e*(-.290806748131+e*(-13.308504545+e*(199.722374056+e*-11.4311378756))),n=1+e*(139.612587808+e*(2189.01116348+e*(7115.24019009+e*45574.6081453)))):(e=1/e,t=-11.4311378756+e*(199.722374056+e*(-13.308504545+e*(-.290806748131+e*-.000145727889667))),n=45574.6081453+e*(7115.24019009+e*(2189.01116348+e*(139.612587808+e*1)))),t/n)}s5.exports=$D});var f5=m((_Y,c5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var l5=B(),BD=e5(),HD=t5(),jD=i5(),WD=a5(),VD=u5();function GD(e){var r,t;return e<-8?(r=e*e,t=l5(-e)/e,(-30+e*t*(6*r*t*t-12+r))/(12*e*r*r)):e<-4?BD(e)/(e*e):e<-2?HD(e):e<2?jD(e):e<10?(r=1/e,WD(r)/(e*e)):e<100?(r=1/e,VD(r)/(e*e)):-l5(e)/(12*e*e*e)}c5.exports=GD});var q5=m((FY,b5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XD=Oo(),m5=tr(),Me=ut(),QD=vt(),d5=ke(),ti=$(),p5=L(),ht=J(),KD=br(),ZD=Y(),qe=B(),JD=$t(),YD=en(),zD=Z0(),xD=w4(),v5=Ao(),g5=B4(),eL=V4(),rL=z4(),tL=f5(),nL=XD("gammaincinv:compute"),wr=.5,_o=.3333333333333333,iL=.25,h5=.2,y5=.16666666666666666,oL=.08333333333333333,aL=.041666666666666664,we=[0,0,0,0,0];function sL(e,r,t){var n,i,o,a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M,C,K,W,G,z,ne,S,_,xr,Hi,ji,Wi,Wa,de,ee,Vi,pe,Qe,Ee,Gi,Xi,Qi;if(r<wr?(a=!0,s=r,Gi=-1):(a=!1,s=t,Gi=1),pe=0,p5(e-1)<1e-4&&(Qe=0,a?r<.001?(Hi=r*r,ne=Hi*r,xr=ne*r,I=xr*r,O=I*r,A=r+Hi*wr+ne*_o+xr*iL+I*h5+O*y5):A=-qe(1-r):A=-qe(t),e===1?(pe=2,Wi=A):(o=Me(e),pe=1)),t<1e-30&&e<wr&&(Qe=0,A=-qe(t*d5(e))+(e-1)*qe(-qe(t*d5(e))),pe=1,o=Me(e)),e>1&&e<500&&r<1e-80){for(Qe=0,u=1/e,n=1/(e+1),A=(Me(e+1)+qe(r))*u,A=ht(A),y=A,Vi=0;Vi<10;Vi++)A=y*ht(A*u)*ZD(1-A*n,u);pe=1,o=Me(e)}if(l=1/e*(qe(r)+Me(e+1)),l<qe(h5*(1+e))&&pe===0&&(Ee=ht(l),Qe=0,M=e*e,ji=M*e,S=ji*e,h=e+1,p=h*h,d=h*p,f=p*p,q=e+2,c=q*q,b=e+3,we[0]=1,we[1]=1/h,we[2]=wr*(3*e+5)/(p*q),we[3]=_o*(31+8*M+33*e)/(d*q*b),we[4]=aL*(2888+1179*ji+125*S+3971*M+5661*e)/(f*c*b*(e+4)),A=Ee*m5(we,Ee),o=Me(e),pe=1),e<10&&pe===0&&(v=ti(e)/(g5(e)*JD),g=KD(.02,v),t<g&&(Qe=0,de=1-e,G=de*de,z=G*de,N=ti(-2/e*qe(t/v)),A=e*v5(N),ee=qe(A),A>5?(C=ee*ee,K=C*ee,W=K*ee,Ee=1/A,we[0]=ee-1,we[1]=(3*de-2*de*ee+C-2*ee+2)*wr,we[2]=(24*de*ee-11*G-24*de-6*C+12*ee-12-9*de*C+6*G*ee+2*K)*y5,we[3]=(-12*z*ee+8.04*de*C-114*G*ee+(72+36*C)+(3*W-72*ee+162)*(de-168*de*ee)-(12*K+25*z)-(22*de*K+36*G*C+120*G))*oL,we[4]=0,A=A-ee+de*Ee*m5(we,Ee)):(Ee=1/A,C=ee*ee,Wa=ee-1,Xi=ee-de*Ee*Wa,Xi<A&&(A-=Xi)),o=Me(e),pe=1)),p5(s-wr)<1e-5&&pe===0&&(Qe=0,u=1/e,A=e-_o+(.019753086419753086+.007211444248481286*u)*u,o=Me(e),pe=1),e<1&&pe===0&&(Qe=0,a?A=ht(1/e*(qe(s)+Me(e+1))):A=ht(1/e*(qe(1-s)+Me(e+1))),o=Me(e),pe=1),pe===0)if(Qe=1,u=1/e,Ee=QD(2*s),N=Gi*Ee/ti(e*wr),Ee<YD)N+=(eL(N)+(rL(N)+tL(N)*u)*u)*u,A=e*v5(N),Qi=N,_=-ti(e/zD)*ht(-wr*e*Qi*Qi)/g5(e),i=1/_;else return nL("Warning: Overflow problems in one or more steps of the computation."),NaN;return pe<2&&(Wi=xD(A,e,Qe,r,t,o,i,a)),Wi}b5.exports=sL});var A5=m((RY,O5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var w5=T(),uL=Xt(),S5=Z(),N5=q5();function lL(e,r,t){return w5(e)||w5(r)?NaN:r<uL?NaN:e>1||e<0?NaN:t===!0?e===0?S5:e===1?0:N5(r,1-e,e):e===0?0:e===1?S5:N5(r,e,1-e)}O5.exports=lL});var ni=m((MY,E5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cL=A5();E5.exports=cL});var _5=m((PY,I5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fo=T(),fL=ni();function mL(e,r,t){return Fo(r)||Fo(t)||Fo(e)||r<0||t<=0||e<0||e>1?NaN:r===0?0:1/t*fL(e,r)}I5.exports=mL});var R5=m((TY,F5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dL=T();function pL(e,r){return dL(e)||e<0||e>1?NaN:r}F5.exports=pL});var T5=m((CY,P5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vL=nr(),M5=T();function gL(e){if(M5(e))return vL(NaN);return r;function r(t){return M5(t)||t<0||t>1?NaN:e}}P5.exports=gL});var Ro=m((DY,D5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hL=ve(),C5=R5(),yL=T5();hL(C5,"factory",yL);D5.exports=C5});var k5=m((LY,L5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bL=nr(),qL=ni(),wL=Ro().factory,Mo=T();function SL(e,r){if(Mo(e)||Mo(r)||e<0||r<=0)return bL(NaN);if(e===0)return wL(0);return t;function t(n){return Mo(n)||n<0||n>1?NaN:1/r*qL(n,e)}}L5.exports=SL});var Po=m((kY,$5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NL=ve(),U5=_5(),OL=k5();NL(U5,"factory",OL);$5.exports=U5});var H5=m((UY,B5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AL=Po();function EL(e,r){return AL(e,r/2,.5)}B5.exports=EL});var W5=m(($Y,j5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IL=Po().factory;function _L(e){return IL(e/2,.5)}j5.exports=_L});var X5=m((BY,G5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FL=ve(),V5=H5(),RL=W5();FL(V5,"factory",RL);G5.exports=V5});var jo=m((Qx,Mv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yk=.7853981633974483;Mv.exports=yk});var Tv=m((Kx,Pv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bk(e){var r,t,n;return e===0?.16666666666666713:(e<0?r=-e:r=e,r<=1?(t=-8.198089802484825+e*(19.562619833175948+e*(-16.262479672107002+e*(5.444622390564711+e*(-.6019598008014124+e*.004253011369004428)))),n=-49.18853881490881+e*(139.51056146574857+e*(-147.1791292232726+e*(70.49610280856842+e*(-14.740913729888538+e*1))))):(e=1/e,t=.004253011369004428+e*(-.6019598008014124+e*(5.444622390564711+e*(-16.262479672107002+e*(19.562619833175948+e*-8.198089802484825)))),n=1+e*(-14.740913729888538+e*(70.49610280856842+e*(-147.1791292232726+e*(139.51056146574857+e*-49.18853881490881))))),t/n)}Pv.exports=bk});var Dv=m((Zx,Cv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function qk(e){var r,t,n;return e===0?.08333333333333809:(e<0?r=-e:r=e,r<=1?(t=28.536655482610616+e*(-25.56901049652825+e*(6.968710824104713+e*(-.5634242780008963+e*.002967721961301243))),n=342.43986579130785+e*(-383.8770957603691+e*(147.0656354026815+e*(-21.947795316429207+e*1)))):(e=1/e,t=.002967721961301243+e*(-.5634242780008963+e*(6.968710824104713+e*(-25.56901049652825+e*28.536655482610616))),n=1+e*(-21.947795316429207+e*(147.0656354026815+e*(-383.8770957603691+e*342.43986579130785)))),t/n)}Cv.exports=qk});var Uv=m((Jx,kv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1995, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var wk=T(),Sk=$(),Lv=jo(),Nk=Tv(),Ok=Dv(),Ak=6123233995736766e-32;function Ek(e){var r,t,n,i,o;if(wk(e))return NaN;if(e>0?n=e:(r=!0,n=-e),n>1)return NaN;if(n>.625)t=1-n,i=t*Ok(t),t=Sk(t+t),o=Lv-t,t=t*i-Ak,o-=t,o+=Lv;else{if(n<1e-8)return e;t=n*n,o=t*Nk(t),o=n*o+n}return r?-o:o}kv.exports=Ek});var fi=m((Yx,$v)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ik=Uv();$v.exports=Ik});var Hv=m((zx,Bv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _k(e){var r,t,n;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(t=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),n=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,t=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),n=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),t/n)}Bv.exports=_k});var Vv=m((xx,Wv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var jv=T(),Fk=Ue(),Rk=$(),Mk=L(),Pk=J(),Wo=Y(),Tk=Wr(),Vo=Fe(),Go=Hv(),Xo=10.900511;function Ck(e,r){var t,n,i,o,a,s,u;return jv(e)||jv(r)?NaN:e<0||r<0?NaN:r===1?1/e:e===1?1/r:(u=e+r,u<Vo?(a=u/e,a/=r,a):u===e&&r<Vo?1/r:u===r&&e<Vo?1/e:(e<r&&(s=r,r=e,e=s),n=e+Xo-.5,i=r+Xo-.5,o=u+Xo-.5,a=Go(e)*(Go(r)/Go(u)),t=e-.5-r,Mk(r*t)<o*100&&e>100?a*=Pk(t*Fk(-r/o)):a*=Wo(n/o,t),o>1e10?a*=Wo(n/o*(i/o),r):a*=Wo(n*i/(o*o),r),a*=Rk(Tk/i),a))}Wv.exports=Ck});var Qo=m((eee,Gv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Dk=Vv();Gv.exports=Dk});var Ko=m((ree,Xv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Lk=2147483647;Xv.exports=Lk});var mi=m((tee,Qv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kk=1.5707963267948966;Qv.exports=kk});var Kv=m((nee,Uk)=>{Uk.exports=[1,1,2,6,24,120,720,5040,40320,362880,3628800,39916800,479001600,6227020800,87178291200,1307674368e3,20922789888e3,355687428096e3,6402373705728e3,121645100408832e3,243290200817664e4,5109094217170944e4,11240007277776077e5,2585201673888498e7,6204484017332394e8,15511210043330986e9,40329146112660565e10,10888869450418352e12,30488834461171387e13,8841761993739702e15,26525285981219107e16,8222838654177922e18,2631308369336935e20,8683317618811886e21,29523279903960416e22,10333147966386145e24,37199332678990125e25,13763753091226346e27,5230226174666011e29,20397882081197444e30,8159152832478977e32,3345252661316381e34,140500611775288e37,6041526306337383e37,2658271574788449e39,11962222086548019e40,5502622159812089e42,25862324151116818e43,12413915592536073e45,6082818640342675e47,30414093201713376e48,15511187532873822e50,8065817517094388e52,42748832840600255e53,2308436973392414e56,12696403353658276e57,7109985878048635e59,40526919504877214e60,23505613312828785e62,13868311854568984e64,832098711274139e67,5075802138772248e68,3146997326038794e70,198260831540444e73,12688693218588417e73,8247650592082472e75,5443449390774431e77,3647111091818868e79,24800355424368305e80,1711224524281413e83,11978571669969892e84,8504785885678623e86,61234458376886085e87,44701154615126844e89,3307885441519386e92,248091408113954e95,18854947016660504e95,14518309202828587e97,11324281178206297e99,8946182130782976e101,7156945704626381e103,5797126020747368e105,4753643337012842e107,3945523969720659e109,3314240134565353e111,281710411438055e114,24227095383672734e114,2107757298379528e117,18548264225739844e118,1650795516090846e121,14857159644817615e122,1352001527678403e125,12438414054641308e126,11567725070816416e128,1087366156656743e131,1032997848823906e133,9916779348709496e134,9619275968248212e136,9426890448883248e138,9332621544394415e140,9332621544394415e142,942594775983836e145,9614466715035127e146,990290071648618e149,10299016745145628e150,1081396758240291e153,11462805637347084e154,1226520203196138e157,1324641819451829e159,14438595832024937e160,1588245541522743e163,17629525510902446e164,1974506857221074e167,22311927486598138e168,25435597334721877e170,2925093693493016e173,3393108684451898e175,3969937160808721e177,4684525849754291e179,5574585761207606e181,6689502913449127e183,8094298525273444e185,9875044200833601e187,1214630436702533e190,1506141741511141e192,1882677176888926e194,2372173242880047e196,30126600184576594e197,3856204823625804e200,4974504222477287e202,6466855489220474e204,847158069087882e207,11182486511960043e208,14872707060906857e210,19929427461615188e212,26904727073180504e214,3659042881952549e217,5012888748274992e219,6917786472619489e221,9615723196941089e223,13462012475717526e225,1898143759076171e228,2695364137888163e230,3854370717180073e232,55502938327393044e233,8047926057471992e236,11749972043909107e238,1727245890454639e241,25563239178728654e242,380892263763057e246,5713383956445855e247,862720977423324e250,13113358856834524e251,20063439050956823e253,30897696138473508e255,4789142901463394e258,7471062926282894e260,11729568794264145e262,1853271869493735e265,29467022724950384e266,47147236359920616e268,7590705053947219e271,12296942187394494e273,20044015765453026e275,3287218585534296e278,5423910666131589e280,9003691705778438e282,1503616514864999e285,25260757449731984e286,4269068009004705e289,7257415615307999e291]});var Jv=m((iee,Zv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $k=T(),Bk=Br(),Hk=ke(),jk=Z(),Wk=Bt(),Vk=Kv();function Gk(e){return $k(e)?NaN:Bk(e)?e<0?NaN:e<=Wk?Vk[e]:jk:Hk(e+1)}Zv.exports=Gk});var Zo=m((oee,Yv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Xk=Jv();Yv.exports=Xk});var xv=m((aee,zv)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Qk(e){var r,t,n;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(t=3847467039331777e-5+e*(3685766504351951e-5+e*(1588920245372942e-5+e*(4059208354298835e-6+e*(6805476611834733e-7+e*(7823975500312005e-8+e*(6246580776401795e-9+e*(341986.3488721347+e*(12287.194511824551+e*(261.61404416416684+e*2.5066282746310007))))))))),n=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,t=2.5066282746310007+e*(261.61404416416684+e*(12287.194511824551+e*(341986.3488721347+e*(6246580776401795e-9+e*(7823975500312005e-8+e*(6805476611834733e-7+e*(4059208354298835e-6+e*(1588920245372942e-5+e*(3685766504351951e-5+e*3847467039331777e-5))))))))),n=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),t/n)}zv.exports=Qk});var r7=m((see,e7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/lanczos.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Kk=xv();e7.exports=Kk});var n7=m((uee,t7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Zk=r7();t7.exports=Zk});var m7=m((lee,f7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var i7=n7(),Jk=ke(),Yk=Ue(),o7=L(),a7=J(),s7=Y(),u7=Fe(),zk=Wr(),xk=mt(),l7=Bt(),eU=4269068009004705e289;function c7(e,r){var t,n,i;return e<u7?r>=l7?(n=c7(r,l7-r),n*=e,n*=eU,1/n):1/(e*Jk(e+r)):(i=e+xk-.5,e+r===e?o7(r/i)<u7?t=a7(-r):t=1:(o7(r)<10?t=a7((.5-e)*Yk(r/i)):t=s7(i/(i+r),e-.5),t*=i7(e)/i7(e+r)),t*=s7(zk/(i+r),r),t)}f7.exports=c7});var y7=m((cee,h7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var rU=L(),d7=_e(),p7=ke(),v7=Zo(),g7=Bt(),tU=m7();function nU(e,r){var t,n,i;if(e<=0||e+r<=0)return p7(e)/p7(e+r);if(n=d7(r),n===r){if(i=d7(e),i===e&&e<=g7&&e+r<=g7)return v7(i-1)/v7(n+i-1);if(rU(r)<20){if(r===0)return 1;if(r<0){for(e-=1,t=e,r+=1;r!==0;)e-=1,t*=e,r+=1;return t}for(t=1/e,r-=1;r!==0;)e+=1,t/=e,r-=1;return t}}return tU(e,r)}h7.exports=nU});var di=m((fee,b7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iU=y7();b7.exports=iU});var N7=m((mee,S7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_37_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Nt=J(),pi=Y(),oU=B(),q7=er(),w7=Hr();function aU(e,r){var t,n;return n=e*oU(r),r>=1?n<q7&&-r>w7?t=pi(r,e)*Nt(-r):e>=1?t=pi(r/Nt(r/e),e):t=Nt(n-r):n>w7?t=pi(r,e)*Nt(-r):r/e<q7?t=pi(r/Nt(r/e),e):t=Nt(n-r),t}S7.exports=aU});var E7=m((dee,A7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var sU=Wt(),uU=ut(),lU=ke(),cU=Ue(),fU=$(),mU=L(),Or=J(),sn=Y(),Jo=jr(),Yo=br(),O7=B(),vi=er(),un=Hr(),zo=mt(),dU=Wr();function pU(e,r){var t,n,i,o,a,s,u;return i=e+zo-.5,u=(r-e-zo+.5)/i,e<1?r<=un?Or(e*O7(r)-r-uU(e)):sn(r,e)*Or(-r)/lU(e):(mU(u*u*e)<=100&&e>150?(t=e*(cU(u)-u)+r*(.5-zo)/i,t=Or(t)):(o=e*O7(r/i),a=e-r,Yo(o,a)<=un||Jo(o,a)>=vi?(n=a/e,Yo(o,a)/2>un&&Jo(o,a)/2<vi?(s=sn(r/i,e/2)*Or(a/2),t=s*s):Yo(o,a)/4>un&&Jo(o,a)/4<vi&&r>e?(s=sn(r/i,e/4)*Or(a/4),t=s*s,t*=t):n>un&&n<vi?t=sn(r*Or(n)/i,e):t=Or(o+a)):t=sn(r/i,e)*Or(a)),t*=fU(i/dU)/sU(e),t)}A7.exports=pU});var M7=m((pee,R7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var vU=di(),I7=Zo(),gU=Kt(),hU=Ue(),gi=L(),_7=Y(),yU=B(),bU=pr(),F7=Fe(),qU=N7(),wU=E7(),Ar=new Array(30);function SU(e,r,t,n,i,o,a){var s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M;if(d=r-1,A=e+d/2,n<.35?y=hU(-n):y=yU(t),M=-A*y,q=wU(r,M),q<=bU)return i;for(a?(s=q/vU(e,r),s/=_7(A,r)):s=qU(r,M)/_7(A,r),s*=o,Ar[0]=1,b=gU(M,r,!0,!0),b/=q,c=i+s*b,l=1,p=y/2,p*=p,v=1,h=4*A*A,f=r,O=1;O<Ar.length;++O){for(l+=2,Ar[O]=0,g=r-O,u=3,N=1;N<O;++N)g=N*r-O,Ar[O]+=g*Ar[O-N]/I7(u),u+=2;if(Ar[O]/=O,Ar[O]+=d/I7(l),b=(f*(f+1)*b+(M+f+1)*v)/h,v*=p,f+=2,I=s*Ar[O]*b,c+=I,I>1){if(gi(I)<gi(F7*c))break}else if(gi(I/F7)<gi(c))break}return c}R7.exports=SU});var T7=m((vee,P7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_37_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function NU(e,r,t){var n,i;if(t===0)return 1;for(n=1,i=0;i<t;i++)n*=(e+i)/(r+i);return n}P7.exports=NU});var L7=m((gee,D7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var C7=L(),OU=jr();function AU(e,r){return OU(C7(e),C7(r))}D7.exports=AU});var U7=m((hee,k7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EU=L7();k7.exports=EU});var H7=m((yee,B7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $7=L(),IU=br();function _U(e,r){return IU($7(e),$7(r))}B7.exports=_U});var W7=m((bee,j7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FU=H7();j7.exports=FU});var yi=m((qee,X7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var xo=Wt(),RU=U7(),MU=W7(),V7=Vr(),Er=Ue(),G7=$(),hi=L(),He=J(),je=Y(),PU=br(),Ne=B(),We=er(),Ot=Hr(),ea=mt(),TU=Wr();function CU(e,r,t,n,i){var o,a,s,u,l,c,f,d,p,v,g,y,h,q;if(!i)return je(t,e)*je(n,r);if(h=e+r,u=e+ea-.5,l=r+ea-.5,c=h+ea-.5,o=xo(h),o/=xo(e)*xo(r),o*=G7(l/TU),o*=G7(u/c),f=(t*r-n*u)/u,d=(n*e-t*l)/l,MU(f,d)<.2)if(f*d>0||PU(e,r)<1)hi(f)<.1?o*=He(e*Er(f)):o*=je(t*c/u,e),hi(d)<.1?o*=He(r*Er(d)):o*=je(n*c/l,r);else if(RU(f,d)<.5)a=e<r,s=r/e,a&&s*d<.1||!a&&f/s>.1?(p=V7(s*Er(d)),p=f+p+p*f,p=e*Er(p),o*=He(p)):(p=V7(Er(f)/s),p=d+p+p*d,p=r*Er(p),o*=He(p));else if(hi(f)<hi(d))if(q=e*Er(f)+r*Ne(n*c/l),q<=Ot||q>=We){if(q+=Ne(o),q>=We)return NaN;o=He(q)}else o*=He(q);else if(q=r*Er(d)+e*Ne(t*c/u),q<=Ot||q>=We){if(q+=Ne(o),q>=We)return NaN;o=He(q)}else o*=He(q);else if(g=t*c/u,y=n*c/l,f=e*Ne(g),d=r*Ne(y),f>=We||f<=Ot||d>=We||d<=Ot)if(e<r)if(v=je(y,r/e),p=e*(Ne(g)+Ne(v)),p<We&&p>Ot)o*=je(v*g,e);else{if(d+=f+Ne(o),d>=We)return NaN;o=He(d)}else if(v=je(g,e/r),p=(Ne(v)+Ne(y))*r,p<We&&p>Ot)o*=je(v*y,r);else{if(d+=f+Ne(o),d>=We)return NaN;o=He(d)}else o*=je(g,e)*je(y,r);return o}X7.exports=CU});var K7=m((wee,Q7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var DU=fo(),LU=yi(),kU={keep:!0,maxIter:1e3};function UU(e,r,t,n){var i=0;return o;function o(){var a,s,u;return s=(e+i-1)*(e+r+i-1)*i*(r-i)*t*t,a=e+2*i-1,s/=a*a,u=i,u+=i*(r-i)*t/(e+2*i-1),u+=(e+i)*(e*n-r*t+1+i*(2-t))/(e+2*i+1),i+=1,[s,u]}}function $U(e,r,t,n,i,o){var a,s,u;return a=LU(e,r,t,n,i),o&&(o[1]=a),a===0?a:(u=UU(e,r,t,n),s=DU(u,kU),a/s)}Q7.exports=$U});var J7=m((See,Z7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BU=9007199254740991;Z7.exports=BU});var z7=m((Nee,Y7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function HU(e,r){var t=0,n;if(e===0)return r;if(r===0)return e;for(;(e&1)===0&&(r&1)===0;)e>>>=1,r>>>=1,t+=1;for(;(e&1)===0;)e>>>=1;for(;r;){for(;(r&1)===0;)r>>>=1;e>r&&(n=r,r=e,e=n),r-=e}return e<<t}Y7.exports=HU});var e8=m((Oee,x7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jU(e,r){var t=1,n;if(e===0)return r;if(r===0)return e;for(;e%2===0&&r%2===0;)e/=2,r/=2,t*=2;for(;e%2===0;)e/=2;for(;r;){for(;r%2===0;)r/=2;e>r&&(n=r,r=e,e=n),r-=e}return t*e}x7.exports=jU});var s8=m((Aee,a8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var r8=T(),t8=Br(),n8=Z(),i8=me(),o8=Ko(),WU=z7(),VU=e8();function GU(e,r){return r8(e)||r8(r)?NaN:e===n8||r===n8||e===i8||r===i8?NaN:t8(e)&&t8(r)?(e<0&&(e=-e),r<0&&(r=-r),e<=o8&&r<=o8?WU(e,r):VU(e,r)):NaN}a8.exports=GU});var l8=m((Eee,u8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XU=s8();u8.exports=XU});var d8=m((Iee,m8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QU=J7(),KU=Z(),c8=Br(),f8=T(),ZU=Vn(),JU=_e(),YU=l8();function ra(e,r){var t,n,i,o,a,s,u;if(f8(e)||f8(r))return NaN;if(!c8(e)||!c8(r))return NaN;if(r<0||(n=1,e<0&&(e=-e+r-1,ZU(r)&&(n*=-1)),r>e))return 0;if(r===0||r===e)return n;if(r===1||r===e-1)return n*e;for(e-r<r&&(r=e-r),u=JU(QU/e),t=1,a=1;a<=r&&!(t>u);a++)t*=e,t/=a,e-=1;return a>r?n*t:(i=ra(e,r-a+1),i===KU?n*i:(o=ra(r,r-a+1),s=YU(i,o),i/=s,o/=s,t/=o,n*t*i))}m8.exports=ra});var v8=m((_ee,p8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zU=d8();p8.exports=zU});var y8=m((Fee,h8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var g8=v8(),Qr=_e(),ln=Y(),xU=pr();function e$(e,r,t,n){var i,o,a,s,u;if(o=ln(t,e),o>xU)for(s=o,u=Qr(e-1);u>r;u--)s*=(u+1)*n/((e-u)*t),o+=s;else if(a=Qr(e*t),a<=r+1&&(a=Qr(r+2)),o=ln(t,a)*ln(n,e-a),o*=g8(Qr(e),Qr(a)),o===0)for(u=a-1;u>r;u--)o+=ln(t,u)*ln(n,e-u),o*=g8(Qr(e),Qr(u));else{for(s=o,i=o,u=a-1;u>r;u--)s*=(u+1)*n/((e-u)*t),o+=s;for(s=i,u=a+1;u<=e;u++)s*=(e-u+1)*t/(u*n),o+=s}return o}h8.exports=e$});var q8=m((Ree,b8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var r$=yi();function t$(e,r,t,n,i,o,a){var s,u,l,c;if(s=r$(e,r,t,n,o),a&&(a[1]=s),s/=e,s===0)return s;for(l=1,u=1,c=0;c<i-1;++c)u*=(e+r+c)*t/(e+c+1),l+=u;return s*=l,s}b8.exports=t$});var A8=m((Mee,O8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ta=Wt(),n$=ct(),i$=Ue(),o$=$(),na=J(),bi=Y(),cn=B(),a$=pr(),w8=er(),S8=Hr(),ia=mt(),s$=Wr(),N8={maxTerms:100};function u$(e,r,t,n){var i=1-r,o=1;return a;function a(){var s=n/e;return e+=1,n*=i*t/o,o+=1,i+=1,s}}function l$(e,r,t,n,i,o,a){var s,u,l,c,f,d,p,v;return i?(p=e+r,u=e+ia-.5,l=r+ia-.5,c=p+ia-.5,s=ta(p)/(ta(e)*ta(r)),f=cn(c/l)*(r-.5),d=cn(t*c/u)*e,f>S8&&f<w8&&d>S8&&d<w8?(e*r<l*10?s*=na((r-.5)*i$(e/l)):s*=bi(c/l,r-.5),s*=bi(t*c/u,e),s*=o$(u/s$),o&&(o[1]=s*bi(a,r))):(s=cn(s)+f+d+(cn(u)-1)/2,o&&(o[1]=na(s+r*cn(a))),s=na(s))):s=bi(t,e),s<a$?n:(v=u$(e,r,t,s),N8.initialValue=n,n$(v,N8))}O8.exports=l$});var sa=m((Pee,P8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var c$=T(),f$=Vr(),qi=_e(),E8=Ue(),I8=fi(),Oe=Qo(),oa=$(),m$=J(),fn=Y(),d$=jr(),_8=br(),wi=yr(),F8=pr(),p$=Ko(),v$=mi(),M8=xe(),Ir=M7(),aa=T7(),g$=yi(),R8=K7(),h$=y8(),mn=q8(),Ve=A8(),y$=1/M8;function b$(e,r,t,n,i,o,a,s){var u,l,c,f,d,p,v,g,y,h,q,b;if(b=1-e,v=s,g=s+a,o[g]=-1,c$(e)||e<0||e>1)return o[v]=NaN,o[g]=NaN,o;if(n){if(r<0||t<0)return o[v]=NaN,o[g]=NaN,o;if(r===0){if(t===0)return o[v]=NaN,o[g]=NaN,o;if(t>0)return o[v]=i?0:1,o}else if(t===0&&r>0)return o[v]=i?1:0,o}else if(r<=0||t<=0)return o[v]=NaN,o[g]=NaN,o;return e===0?(r===1?o[g]=1:o[g]=r<1?wi/2:F8*2,i?(o[v]=n?1:Oe(r,t),o):(o[v]=0,o)):e===1?(t===1?o[g]=1:o[g]=t<1?wi/2:F8*2,i?o[v]=0:o[v]=n?1:Oe(r,t),o):r===.5&&t===.5?(o[g]=y$*oa(b*e),q=I8(oa(i?b:e)),q/=v$,n||(q*=M8),o[v]=q,o):(r===1&&(p=t,t=r,r=p,p=b,b=e,e=p,i=!i),t===1?r===1?(o[v]=i?b:e,o[g]=1,o):(o[g]=r*fn(e,r-1),b<.5?q=i?-f$(r*E8(-b)):m$(r*E8(-b)):q=i?-(fn(e,r)-1):fn(e,r),n||(q/=r),o[v]=q,o):(_8(r,t)<=1?(e>.5&&(p=t,t=r,r=p,p=b,b=e,e=p,i=!i),d$(r,t)<=1?r>=_8(.2,t)||fn(e,r)<=.9?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ve(r,t,e,c,n,o,b)):c=Ve(r,t,e,0,n,o,b):(p=t,t=r,r=p,p=b,b=e,e=p,i=!i,b>=.3?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ve(r,t,e,c,n,o,b)):c=Ve(r,t,e,0,n,o,b):(n?l=1:l=aa(r+t,r,20),c=mn(r,t,e,b,20,n,o),i?(c-=n?1:Oe(r,t),i=!1,c=-Ir(r+20,t,e,b,c,l,n)):c=Ir(r+20,t,e,b,c,l,n))):t<=1||e<.1&&fn(t*e,r)<=.7?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ve(r,t,e,c,n,o,b)):c=Ve(r,t,e,0,n,o,b):(p=t,t=r,r=p,p=b,b=e,e=p,i=!i,b>=.3?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ve(r,t,e,c,n,o,b)):c=Ve(r,t,e,0,n,o,b):r>=15?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ir(r,t,e,b,c,1,n)):c=Ir(r,t,e,b,0,1,n):(n?l=1:l=aa(r+t,r,20),c=mn(r,t,e,b,20,n,o),i?(c-=n?1:Oe(r,t),i=!1,c=-Ir(r+20,t,e,b,c,l,n)):c=Ir(r+20,t,e,b,c,l,n)))):(r<t?u=r-(r+t)*e:u=(r+t)*b-t,u<0&&(p=t,t=r,r=p,p=b,b=e,e=p,i=!i),t<40?qi(r)===r&&qi(t)===t&&r<p$-100?(y=r-1,h=t+y,c=h$(h,y,e,b),n||(c*=Oe(r,t))):t*e<=.7?i?(c=-(n?1:Oe(r,t)),i=!1,c=-Ve(r,t,e,c,n,o,b)):c=Ve(r,t,e,0,n,o,b):r>15?(h=qi(t),h===t&&(h-=1),f=t-h,n?l=1:l=aa(r+f,f,h),c=mn(f,r,b,e,h,n),c=Ir(r,f,e,b,c,1,n),c/=l):n?(h=qi(t),f=t-h,f<=0&&(h-=1,f+=1),c=mn(f,r,b,e,h,n),c+=mn(r,f,e,b,20,n),i&&(c-=1),c=Ir(r+20,f,e,b,c,1,n),i&&(c=-c,i=!1)):c=R8(r,t,e,b,n,o):c=R8(r,t,e,b,n,o)),o[g]<0&&(o[g]=g$(r,t,e,b,!0)),d=b*e,o[g]!==0&&(wi*d<o[g]?o[g]=wi/2:o[g]/=d),o[v]=i?(n?1:Oe(r,t))-c:c,o))}P8.exports=b$});var C8=m((Tee,T8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var q$=sa();function w$(e,r,t,n,i){return q$(e,r,t,n,i,[0,0],1,0)}T8.exports=w$});var ua=m((Cee,L8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var S$=ve(),D8=C8(),N$=sa();S$(D8,"assign",N$);L8.exports=D8});var U8=m((Dee,k8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var O$=ua().assign;function A$(e,r,t,n,i){var o=[0,0];return n=n!==!1,i=i===!0,O$(e,r,t,n,i,o,1,0),o[0]}k8.exports=A$});var Si=m((Lee,$8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var E$=U8();$8.exports=E$});var W8=m((kee,j8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var B8=Si(),H8=T(),I$=Y();function _$(e,r){var t,n,i;return H8(e)||H8(r)||r<=0?NaN:e===0?.5:(t=I$(e,2),r>2*t?(i=t/(r+t),n=B8(i,.5,r/2,!0,!0)/2):(i=r/(r+t),n=B8(i,r/2,.5,!0,!1)/2),e>0?1-n:n)}j8.exports=_$});var Q8=m((Uee,X8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var F$=nr(),V8=Si(),G8=T(),R$=Y();function M$(e){if(G8(e)||e<=0)return F$(NaN);return r;function r(t){var n,i,o;return G8(t)?NaN:t===0?.5:(n=R$(t,2),e>2*n?(o=n/(e+n),i=V8(o,.5,e/2,!0,!0)/2):(o=e/(e+n),i=V8(o,e/2,.5,!0,!1)/2),t>0?1-i:i)}}X8.exports=M$});var J8=m(($ee,Z8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var P$=ve(),K8=W8(),T$=Q8();P$(K8,"factory",T$);Z8.exports=K8});var e9=m((Bee,x8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1995, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var C$=T(),Y8=fi(),D$=$(),z8=jo(),L$=6123233995736766e-32;function k$(e){var r;return C$(e)?NaN:e<-1||e>1?NaN:e>.5?2*Y8(D$(.5-.5*e)):(r=z8-Y8(e),r+=L$,r+=z8,r)}x8.exports=k$});var t9=m((Hee,r9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var U$=e9();r9.exports=U$});var Ni=m((jee,n9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $$=1.4142135623730951;n9.exports=$$});var o9=m((Wee,i9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function B$(e){return e===0?.16666666666666666:.16666666666666666+e*.16666666666666666}i9.exports=B$});var s9=m((Vee,a9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function H$(e){return e===0?.058333333333333334:.058333333333333334+e*(.06666666666666667+e*.008333333333333333)}a9.exports=H$});var l9=m((Gee,u9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function j$(e){return e===0?.0251984126984127:.0251984126984127+e*(.026785714285714284+e*(.0017857142857142857+e*.0001984126984126984))}u9.exports=j$});var f9=m((Xee,c9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function W$(e){return e===0?.012039792768959435:.012039792768959435+e*(.010559964726631394+e*(-.0011078042328042327+e*(.0003747795414462081+e*27557319223985893e-22)))}c9.exports=W$});var d9=m((Qee,m9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function V$(e){return e===0?.003837005972422639:.003837005972422639+e*(.00610392115600449+e*(-.0016095979637646305+e*(.0005945867404200738+e*(-6270542728876062e-20+e*2505210838544172e-23))))}m9.exports=V$});var v9=m((Kee,p9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function G$(e){return e===0?.0032177478835464946:.0032177478835464946+e*(.0010898206731540065+e*(-.0012579159844784845+e*(.0006908420797309686+e*(-.00016376804137220805+e*(154012654012654e-19+e*16059043836821613e-26)))))}p9.exports=G$});var h9=m((Zee,g9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function X$(e){return e===0?.001743826229834001:.001743826229834001+e*(3353097688001788e-20+e*(-.0007624513544032393+e*(.0006451304695145635+e*(-.000249472580470431+e*(49255746366361444e-21+e*(-39851014346715405e-22+e*7647163731819816e-28))))))}g9.exports=X$});var b9=m((Jee,y9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Q$(e){return e===0?.0009647274732138864:.0009647274732138864+e*(-.0003110108632631878+e*(-.00036307660358786886+e*(.0005140660578834113+e*(-.00029133414466938067+e*(9086710793521991e-20+e*(-15303004486655377e-21+e*(10914179173496788e-22+e*28114572543455206e-31)))))))}y9.exports=Q$});var w9=m((Yee,q9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function K$(e){return e===0?.0005422926281312969:.0005422926281312969+e*(-.0003694266780000966+e*(-.00010230378073700413+e*(.00035764655430568635+e*(-.00028690924218514614+e*(.00012645437628698076+e*(-33202652391372056e-21+e*(4890304529197534e-21+e*(-3123956959982987e-22+e*822063524662433e-32))))))))}q9.exports=K$});var N9=m((zee,S9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Z$=di(),J$=tr(),Y$=$(),z$=xe(),x$=o9(),eB=s9(),rB=l9(),tB=f9(),nB=d9(),iB=v9(),oB=h9(),aB=b9(),sB=w9(),uB=0,Ge=[1,0,0,0,0,0,0,0,0,0];function lB(e,r){var t,n;return n=Z$(e/2,.5)*Y$(e*z$)*(r-.5),t=1/e,Ge[1]=x$(t),Ge[2]=eB(t),Ge[3]=rB(t),Ge[4]=tB(t),Ge[5]=nB(t),Ge[6]=iB(t),Ge[7]=oB(t),Ge[8]=aB(t),Ge[9]=sB(t),uB+n*J$(Ge,n*n)}S9.exports=lB});var E9=m((xee,A9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var cB=di(),fB=tr(),O9=$(),mB=Y(),dB=xe(),_r=[0,0,0,0,0,0,0];function pB(e,r){var t,n,i,o,a,s,u,l;return l=cB(e/2,.5)*O9(e*dB)*r,o=e+2,a=e+4,s=e+6,_r[0]=1,_r[1]=-(e+1)/(2*o),o*=e+2,_r[2]=-e*(e+1)*(e+3)/(8*o*a),o*=e+2,_r[3]=-e*(e+1)*(e+5)*((3*e+7)*e-2)/(48*o*a*s),o*=e+2,a*=e+4,_r[4]=-e*(e+1)*(e+7)*(((((15*e+154)*e+465)*e+286)*e-336)*e+64)/(384*o*a*s*(e+8)),o*=e+2,_r[5]=-e*(e+1)*(e+3)*(e+9)*((((((35*e+452)*e+1573)*e+600)*e-2020)*e+928)*e-128)/(1280*o*a*s*(e+8)*(e+10)),o*=e+2,a*=e+4,s*=e+6,_r[6]=-e*(e+1)*(e+11)*(((((((((((945*e+31506)*e+425858)*e+2980236)*e+11266745)*e+20675018)*e+7747124)*e-22574632)*e-8565600)*e+18108416)*e-7099392)*e+884736)/(46080*o*a*s*(e+8)*(e+10)*(e+12)),u=O9(e),i=mB(u*l,1/e),n=i*i,t=fB(_r,n),t*=u,t/=i,-t}A9.exports=pB});var M9=m((ere,R9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var I9=vt(),vB=Vr(),_9=$(),gB=Y(),hB=mi(),F9=Ni();function yB(e,r){var t,n,i,o,a,s,u;return e>1e20?-I9(2*r)*F9:(t=1/(e-.5),n=48/(t*t),i=((20700*t/n-98)*t-16)*t+96.36,o=((94.5/(n+i)-3)/n+1)*_9(t*hB)*e,u=gB(o*2*r,2/e),u>.05+t?(s=-I9(2*r)*F9,u=s*s,e<5&&(i+=.3*(e-4.5)*(s+.6)),i+=(((.05*o*s-5)*s-7)*s-2)*s+n,u=(((((.4*u+6.3)*u+36)*u+94.5)/i-u-3)/n+1)*s,u=vB(t*u*u)):u=((1/(((e+6)/(e*u)-.089*o-.822)*(e+2)*3)+.5/(e+4))*u-1)*(e+1)/(e+2)+1/u,a=_9(e*u),-a)}R9.exports=yB});var H9=m((rre,B9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var P9=vt(),T9=_e(),la=Ur(),C9=P0(),bB=t9(),Oi=$(),qB=L(),D9=jn(),wB=Y(),SB=at(),L9=Ni(),k9=xe(),U9=N9(),Ai=E9(),ca=M9(),$9=268435456,NB=1/3,OB=106/3,AB=.8549879733383485;function EB(e,r,t){var n,i,o,a,s,u,l,c,f,d,p,v,g,y,h,q;if(s=0,r>t?(l=t,t=r,r=l,a=!0):a=!1,T9(e)===e&&e<20)switch(i=la(1,OB),T9(e)){case 1:r===.5?s=0:s=-D9(k9*r)/SB(k9*r);break;case 2:s=(2*r-1)/Oi(2*r*t);break;case 4:u=4*r*t,o=Oi(u),g=4*D9(bB(o)/3)/o,y=Oi(g-4),s=r-.5<0?-y:y;break;case 6:if(r<1e-150)return(a?-1:1)*ca(e,r);h=4*(r-r*r),q=wB(h,NB),v=6*(1+AB*(1/q-1));do f=v*v,d=f*f,p=v*d,c=v,v=2*(8*h*p-270*f+2187)/(5*(4*h*d-216*v-243));while(qB((v-c)/v)>i);v=Oi(v-e),s=r-.5<0?-v:v;break;default:e>$9?s=P9(2*r)*L9:e<3?(n=.2742-e*.0242143,r>n?s=U9(e,r):s=Ai(e,r)):(n=la(1,C9(e/-.654)),r>n?s=ca(e,r):s=Ai(e,r))}else e>$9?s=-P9(2*r)*L9:e<3?(n=.2742-e*.0242143,r>n?s=U9(e,r):s=Ai(e,r)):(n=la(1,C9(e/-.654)),r>n?s=ca(e,r):s=Ai(e,r));return a?-s:s}B9.exports=EB});var W9=m((tre,j9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var IB=H9();function _B(e,r,t){var n,i,o,a;return i=r/2,o=1-i,n=e*2,a=IB(n,i,o),t&&(t.value=a*a/(n+a*a)),n/(n+a*a)}j9.exports=_B});var X9=m((nre,G9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Ei=tr(),FB=vt(),V9=$(),RB=J(),or=Ni(),Q=[0,0,0,0,0,0,0],dn=[0,0,0,0];function MB(e,r,t){var n,i,o,a,s,u,l;return n=FB(2*t),n/=-V9(e/2),dn[0]=n,u=r-e,a=u*u,s=a*u,Q[0]=-u*or/2,Q[1]=(1-2*u)/8,Q[2]=-(u*or/48),Q[3]=-1/192,Q[4]=-u*or/3840,Q[5]=0,Q[6]=0,dn[1]=Ei(Q,n),Q[0]=u*or*(3*u-2)/12,Q[1]=(20*a-12*u+1)/128,Q[2]=u*or*(20*u-1)/960,Q[3]=(16*a+30*u-15)/4608,Q[4]=u*or*(21*u+32)/53760,Q[5]=(-(32*a)+63)/368640,Q[6]=-u*or*(120*u+17)/25804480,dn[2]=Ei(Q,n),Q[0]=u*or*(-75*a+80*u-16)/480,Q[1]=(-1080*s+868*a-90*u-45)/9216,Q[2]=u*or*(-1190*a+84*u+373)/53760,Q[3]=(-2240*s-2508*a+2100*u-165)/368640,Q[4]=0,Q[5]=0,Q[6]=0,dn[3]=Ei(Q,n),o=Ei(dn,1/e),i=o*o,l=-RB(-i/2),i===0?.5:(1+o*V9((1+l)/i))/2}G9.exports=MB});var fa=m((ire,K9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Q9=B(),PB=yr(),Ii=PB/4;function TB(e,r){return t;function t(n){var i,o,a;return a=1-n,a===0?[-Ii,-Ii]:n===0?[-Ii,-Ii]:(o=Q9(n)+r*Q9(a)+e,i=1/n-r/a,[o,i])}}K9.exports=TB});var J9=m((ore,Z9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CB=T();function DB(e){return e===0||CB(e)?e:e<0?-1:1}Z9.exports=DB});var pn=m((are,Y9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LB=J9();Y9.exports=LB});var da=m((sre,x9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/tools/roots.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var z9=pn(),_i=L(),kB=Ur(),ma=yr();function UB(e,r,t,n,i,o){var a,s,u,l,c,f,d,p,v,g;v=0,a=0,c=r,l=kB(1,1-i),d=ma,s=ma,u=ma,f=o;do{if(a=v,u=s,s=d,p=e(c),v=p[0],g=p[1],f-=1,v===0)break;if(g===0?(a===0&&(c===t?r=n:r=t,a=e(r),d=r-c),z9(a)*z9(v)<0?d<0?d=(c-t)/2:d=(c-n)/2:d<0?d=(c-n)/2:d=(c-t)/2):d=v/g,_i(d*2)>_i(u)&&(d=d>0?(c-t)/2:(c-n)/2),r=c,c-=d,c<=t){if(d=.5*(r-t),c=r-d,c===t||c===n)break}else if(c>=n&&(d=.5*(r-n),c=r-d,c===t||c===n))break;d>0?n=r:t=r}while(f&&_i(c*l)<_i(d));return c}x9.exports=UB});var rg=m((ure,eg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function $B(e){return e===0?-1:-1+e*(-5+e*5)}eg.exports=$B});var ng=m((lre,tg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function BB(e){return e===0?1:1+e*(21+e*(-69+e*46))}tg.exports=BB});var og=m((cre,ig)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function HB(e){return e===0?7:7+e*(-2+e*(33+e*(-62+e*31)))}ig.exports=HB});var sg=m((fre,ag)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jB(e){return e===0?25:25+e*(-52+e*(-17+e*(88+e*(-115+e*46))))}ag.exports=jB});var lg=m((mre,ug)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function WB(e){return e===0?7:7+e*(12+e*(-78+e*52))}ug.exports=WB});var fg=m((dre,cg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function VB(e){return e===0?-7:-7+e*(2+e*(183+e*(-370+e*185)))}cg.exports=VB});var dg=m((pre,mg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function GB(e){return e===0?-533:-533+e*(776+e*(-1835+e*(10240+e*(-13525+e*5410))))}mg.exports=GB});var vg=m((vre,pg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function XB(e){return e===0?-1579:-1579+e*(3747+e*(-3372+e*(-15821+e*(45588+e*(-45213+e*15071)))))}pg.exports=XB});var hg=m((gre,gg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function QB(e){return e===0?449:449+e*(-1259+e*(-769+e*(6686+e*(-9260+e*3704))))}gg.exports=QB});var bg=m((hre,yg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function KB(e){return e===0?63149:63149+e*(-151557+e*(140052+e*(-727469+e*(2239932+e*(-2251437+e*750479)))))}yg.exports=KB});var wg=m((yre,qg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZB(e){return e===0?29233:29233+e*(-78755+e*(105222+e*(146879+e*(-1602610+e*(3195183+e*(-2554139+e*729754))))))}qg.exports=ZB});var Ng=m((bre,Sg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function JB(e){return e===0?1:1+e*(-13+e*13)}Sg.exports=JB});var Ag=m((qre,Og)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function YB(e){return e===0?1:1+e*(21+e*(-69+e*46))}Og.exports=YB});var _g=m((wre,Ig)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var At=tr(),zB=vt(),xB=L(),eH=J(),Eg=B(),rH=$(),tH=at(),nH=jn(),iH=fa(),oH=da(),aH=rg(),sH=ng(),uH=og(),lH=sg(),cH=lg(),fH=fg(),mH=dg(),dH=vg(),pH=hg(),vH=bg(),gH=wg(),hH=Ng(),yH=Ag(),D=[0,0,0,0,0,0],vn=[0,0,0,0];function bH(e,r,t){var n,i,o,a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I;return s=zB(2*e)/-rH(r/2),N=tH(t),b=nH(t),vn[0]=s,h=N*N,q=b*b,g=N*b,v=g*g,p=v*g,d=v*v,f=v*p,c=p*p,l=d*p,D[0]=(2*h-1)/(3*g),D[1]=-aH(h)/(36*v),D[2]=sH(h)/(1620*p),D[3]=uH(h)/(6480*d),D[4]=lH(h)/(90720*f),D[5]=0,vn[1]=At(D,s),D[0]=-cH(h)/(405*p),D[1]=fH(h)/(2592*d),D[2]=-mH(h)/(204120*f),D[3]=-dH(h)/(2099520*c),D[4]=0,D[5]=0,vn[2]=At(D,s),D[0]=pH(h)/(102060*f),D[1]=-vH(h)/(20995200*c),D[2]=gH(h)/(36741600*l),D[3]=0,D[4]=0,D[5]=0,vn[3]=At(D,s),u=At(vn,1/r),o=b/N,o*=o,y=-(u*u)/(2*h)+Eg(h)+q*Eg(q)/h,xB(u)<.7?(D[0]=h,D[1]=g,D[2]=(1-2*h)/3,D[3]=hH(h)/(36*g),D[4]=yH(h)/(270*v),D[5]=0,I=At(D,u)):(O=eH(y),D[0]=O,D[1]=o,D[2]=0,D[3]=3*o*(3*o+1)/6,D[4]=4*o*(4*o+1)*(4*o+2)/24,D[5]=5*o*(5*o+1)*(5*o+2)*(5*o+3)/120,I=At(D,O),(I-h)*u<0&&(I=1-I)),u<0?(i=0,n=h):(i=h,n=1),(I<i||I>n)&&(I=(i+n)/2),a=iH(-y,o),I=oH(a,I,i,n,32,100),I}Ig.exports=bH});var Rg=m((Sre,Fg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qH=5e-324;Fg.exports=qH});var Cg=m((Nre,Tg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Mg=ni(),Pg=B(),wH=$(),SH=Rg(),NH=fa(),OH=da();function AH(e,r,t,n){var i,o,a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M,C,K,W,G,z,ne,S,_,xr;return t<n?u=Mg(t,r,!0):u=Mg(n,r,!1),u/=e,h=r/e,S=wH(1+h),O=S*S,I=O*S,A=O*O,M=I*O,C=I*I,K=A*I,W=A*A,G=M*A,c=M*M,ne=u-h,q=ne*ne,b=q*ne,N=q*q,z=S+1,f=z*z,d=z*f,p=f*f,v=(S+2)*(S-1)/(3*S),v+=(I+9*O+21*S+5)*ne/(36*O*z),v-=(A-13*I+69*O+167*S+46)*q/(1620*f*I),v-=(7*M+21*A+70*I+26*O-93*S-31)*b/(6480*d*A),v-=(75*C+202*M+188*A-888*I-1345*O+118*S+138)*N/(272160*p*M),g=(28*A+131*I+402*O+581*S+208)*(S-1)/(1620*z*I),g-=(35*C-154*M-623*A-1636*I-3983*O-3514*S-925)*ne/(12960*f*A),g-=(2132*K+7915*C+16821*M+35066*A+87490*I+141183*O+95993*S+21640)*q/(816480*M*d),g-=(11053*W+53308*K+117010*C+163924*M+116188*A-258428*I-677042*O-481940*S-105497)*b/(14696640*p*C),y=-((3592*K+8375*C-1323*M-29198*A-89578*I-154413*O-116063*S-29632)*(S-1))/(816480*M*f),y-=(442043*G+2054169*W+3803094*K+3470754*C+2141568*M-2393568*A-19904934*I-34714674*O-23128299*S-5253353)*ne/(146966400*C*d),y-=(116932*c+819281*G+2378172*W+4341330*K+6806004*C+10622748*M+18739500*A+30651894*I+30869976*O+15431867*S+2919016)*q/(146966400*p*K),l=u+v/e+g/(e*e)+y/(e*e*e),l<=0&&(l=SH),_=l-h*Pg(l)+(1+h)*Pg(1+h)-h,i=1/(1+h),a=l<h?i:0,s=l<h?1:i,xr=(a+s)/2,o=NH(_,h),OH(o,xr,a,s,32,100)}Tg.exports=AH});var Lg=m((Ore,Dg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/tools/roots.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var re=L(),EH=Ur(),pa=pn(),IH=jr(),va=yr();function _H(e,r,t,n,i,o){var a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O;b=0,s=!1,f=r,c=EH(1,1-i),v=IH(1e7*r,1e7),d=0,u=v,l=v,p=o;do{if(d=b,l=u,u=v,q=e(f),b=q[0],N=q[1],O=q[2],p-=1,b===0)break;if(N===0?(d===0&&(f===t?r=n:r=t,d=e(r),v=r-f),pa(d)*pa(b)<0?v<0?v=(f-t)/2:v=(f-n)/2:v<0?v=(f-n)/2:v=(f-t)/2):O===0?v=b/N:(g=2*b,h=2*N-b*(O/N),re(h)<1&&re(g)>=re(h)*va?v=b/N:v=g/h,v*N/b<0&&(v=b/N,re(v)>2*re(r)&&(v=(v<0?-1:1)*2*re(r)))),a=re(v/l),a>.8&&a<2&&(v=v>0?(f-t)/2:(f-n)/2,re(v)>f&&(v=pa(v)*f),l=v*3),r=f,f-=v,f<t){if(re(t)<1&&re(f)>1&&va/re(f)<re(t)?y=1e3:y=f/t,re(y)<1&&(y=1/y),!s&&y>0&&y<3)v=.99*(r-t),f=r-v,s=!0;else if(v=(r-t)/2,f=r-v,f===t||f===n)break}else if(f>n){if(re(n)<1&&re(f)>1&&va/re(f)<re(n)?y=1e3:y=f/n,re(y)<1&&(y=1/y),!s&&y>0&&y<3)v=.99*(r-n),f=r-v,s=!0;else if(v=(r-n)/2,f=r-v,f===t||f===n)break}v>0?n=r:t=r}while(p&&re(f*c)<re(v));return f}Dg.exports=_H});var Ug=m((Are,kg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var FH=ua().assign,RH=L(),MH=yr(),ga=pr();function PH(e,r,t,n){return i;function i(o){var a,s,u,l,c;return c=1-o,a=[0,0],FH(o,e,r,!0,n,a,1,0),l=a[0]-t,s=a[1],n&&(s=-s),c===0&&(c=ga*64),o===0&&(o=ga*64),u=s*(-(c*e)+(r-2)*o+1),RH(u)<c*o*MH&&(u/=c*o),n&&(u=-u),s===0&&(s=(n?-1:1)*ga*64),[l,s,u]}}kg.exports=PH});var Kg=m((Ere,Qg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var TH=tr(),$g=Si(),ha=Vr(),Bg=Ue(),CH=fi(),Et=Qo(),Hg=$(),DH=L(),jg=J(),Xe=Y(),Wg=at(),LH=jr(),kH=br(),Vg=B(),ya=pr(),Gg=mi(),Xg=Fe(),UH=W9(),$H=X9(),BH=_g(),HH=Cg(),jH=Lg(),WH=Ug(),VH=32,GH=1e3,Kr=[0,0,0,0,0];function XH(e,r,t,n){var i,o,a,s,u,l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M,C,K,W,G,z,ne,S,_;if(o=!1,n===0)return[1,0];if(t===0)return[0,1];if(e===1){if(r===1)return[t,1-t];g=r,r=e,e=g,g=n,n=t,t=g,o=!0}if(S=0,s=0,l=1,e===.5){if(r===.5)return S=Wg(t*Gg),S*=S,_=Wg(n*Gg),_*=_,[S,_];r>.5&&(g=r,r=e,e=g,g=n,n=t,t=g,o=!o)}if(r===.5&&e>=.5&&t!==1)M={},S=UH(e,t,M),_=M.value;else{if(r===1)return t<n?e>1?(S=Xe(t,1/e),_=-ha(Vg(t)/e)):(S=Xe(t,1/e),_=1-S):(S=jg(Bg(-n)/e),_=-ha(Bg(-n)/e)),o&&(g=_,_=S,S=g),[S,_];if(e+r>5)t>.5&&(g=r,r=e,e=g,g=n,n=t,t=g,o=!o),d=kH(e,r),f=LH(e,r),Hg(d)>f-d&&d>5?(S=$H(e,r,t),_=1-S):(G=e+r,u=CH(Hg(e/G)),a=d/G,a>=.2&&a<=.8&&G>=10?(v=Xe(t,1/e),v<.0025&&e+r<200?S=v*Xe(e*Et(e,r),1/e):S=BH(t,G,u),_=1-S):(e<r&&(g=r,r=e,e=g,g=n,n=t,t=g,o=!o),p=0,r<2&&(p=Et(e,r)),p===0?_=1:(_=Xe(r*n*p,1/r),S=1-_)),_>1e-5&&(S=HH(e,r,t,n),_=1-S));else if(e<1&&r<1){if(A=(1-e)/(2-e-r),b=$g(A,e,r)-t,DH(b)/t<Xg*3)return o?[1-A,A]:[A,1-A];b<0&&(g=r,r=e,e=g,g=n,n=t,t=g,o=!o,A=1-A),I=Xe(e*t*Et(e,r),1/e),S=I/(1+I),_=1/(1+I),S>A&&(S=A),l=A}else e>1&&r>1?(A=(e-1)/(e+r-2),y=(r-1)/(e+r-2),O=$g(A,e,r)-t,O<0&&(g=r,r=e,e=g,g=n,n=t,t=g,g=y,y=A,A=g,o=!o),N=Vg(t*e*Et(e,r))/e,S=jg(N),_=S<.9?1-S:-ha(N),r<e&&S<.2&&(h=e-1,q=r-1,C=e*e,K=e*C,W=r*r,Kr[0]=0,Kr[1]=1,Kr[2]=q/h,h*=h,Kr[3]=q*(3*e*r+5*r+C-e-4)/(2*(e+2)*h),h*=e+1,Kr[4]=q*(33*e*W+31*W+8*C*W-30*e*r-47*r+11*C*r+6*K*r+18+4*e-K+C*C-10*C),Kr[4]/=3*(e+3)*(e+2)*h,S=TH(Kr,S)),S>A&&(S=A),l=A):(r<e&&(g=r,r=e,e=g,g=n,n=t,t=g,o=!o),Xe(t,1/e)<.5?(S=Xe(t*e*Et(e,r),1/e),S===0&&(S=ya),_=1-S):(_=Xe(1-Xe(t,r*Et(e,r)),1/r),_===0&&(_=ya),S=1-_))}return S>.5&&(g=r,r=e,e=g,g=n,n=t,t=g,g=_,_=S,S=g,o=!o,z=1-l,ne=1-s,s=z,l=ne),s===0&&(o?(s=Xg,S<s&&(S=s)):s=ya,S<s&&(S=s)),i=VH,S<1e-50&&(e<1||r<1)&&(i*=3,i/=2),c=WH(e,r,t<n?t:n,t>=n),S=jH(c,S,s,l,i,GH),S===s&&(S=0),o?[1-S,S]:[S,1-S]}Qg.exports=XH});var ba=m((Ire,Zg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QH=Kg();Zg.exports=QH});var zg=m((_re,Yg)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KH=ba(),Jg=T(),ZH=pn(),JH=$();function YH(e,r){var t,n;return Jg(r)||Jg(e)||r<=0||e<0||e>1?NaN:(t=e>.5?1-e:e,n=KH(r/2,.5,2*t,1-2*t),ZH(e-.5)*JH(r*n[1]/n[0]))}Yg.exports=YH});var rh=m((Fre,eh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zH=nr(),xH=ba(),xg=T(),ej=pn(),rj=$();function tj(e){if(xg(e)||e<=0)return zH(NaN);return r;function r(t){var n,i;return xg(t)||t<0||t>1?NaN:(n=t>.5?1-t:t,i=xH(e/2,.5,2*n,1-2*n),ej(t-.5)*rj(e*i[1]/i[0]))}}eh.exports=tj});var ih=m((Rre,nh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nj=ve(),th=zg(),ij=rh();nj(th,"factory",ij);nh.exports=th});var ah=m((Mre,oh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oj=jt(),aj=$(),qa=T();function sj(e,r,t){var n,i;return qa(e)||qa(r)||qa(t)||t<0?NaN:t===0?e<r?0:1:(n=t*aj(2),i=e-r,.5*oj(-i/n))}oh.exports=sj});var uh=m((Pre,sh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uj=nr(),lj=yo().factory,wa=T(),cj=$(),fj=jt();function mj(e,r){var t;if(wa(e)||wa(r)||r<0)return uj(NaN);if(r===0)return lj(e);return t=r*cj(2),n;function n(i){var o;return wa(i)?NaN:(o=i-e,.5*fj(-o/t))}}sh.exports=mj});var fh=m((Tre,ch)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dj=ve(),lh=ah(),pj=uh();dj(lh,"factory",pj);ch.exports=lh});var dh=m((Cre,mh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function vj(e){var r,t,n;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(t=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),n=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,t=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),n=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),t/n)}mh.exports=vj});var vh=m((Dre,ph)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function gj(e){var r,t,n;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(t=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),n=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,t=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),n=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),t/n)}ph.exports=gj});var hh=m((Lre,gh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hj(e){var r,t,n;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(t=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),n=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,t=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),n=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),t/n)}gh.exports=hj});var bh=m((kre,yh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function yj(e){var r,t,n;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(t=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),n=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,t=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),n=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),t/n)}yh.exports=yj});var wh=m((Ure,qh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bj(e){var r,t,n;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(t=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),n=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,t=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),n=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),t/n)}qh.exports=bj});var Ah=m(($re,Oh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_48_0/boost/math/special_functions/detail/erf_inv.hpp}. This implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var qj=T(),Sh=$(),Nh=B(),wj=Z(),Sj=me(),Nj=dh(),Oj=vh(),Aj=hh(),Ej=bh(),Ij=wh(),_j=.08913147449493408,Fj=2.249481201171875,Rj=.807220458984375,Mj=.9399557113647461,Pj=.9836282730102539;function Tj(e){var r,t,n,i,o,a;return qj(e)?NaN:e===1?wj:e===-1?Sj:e===0?e:e>1||e<-1?NaN:(e<0?(r=-1,t=-e):(r=1,t=e),i=1-t,t<=.5?(o=t*(t+10),a=Nj(t),r*(o*_j+o*a)):i>=.25?(o=Sh(-2*Nh(i)),i-=.25,a=Oj(i),r*(o/(Fj+a))):(i=Sh(-Nh(i)),i<3?(n=i-1.125,a=Aj(n),r*(Rj*i+a*i)):i<6?(n=i-3,a=Ej(n),r*(Mj*i+a*i)):(n=i-6,a=Ij(n),r*(Pj*i+a*i))))}Oh.exports=Tj});var Sa=m((Bre,Eh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Cj=Ah();Eh.exports=Cj});var _h=m((Hre,Ih)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Dj=Sa(),Na=T(),Lj=$();function kj(e,r,t){var n,i;return Na(r)||Na(t)||Na(e)||t<0||e<0||e>1?NaN:t===0?r:(n=r,i=t*Lj(2),n+i*Dj(2*e-1))}Ih.exports=kj});var Rh=m((jre,Fh)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Uj=nr(),$j=Ro().factory,Bj=Sa(),Oa=T(),Hj=$();function jj(e,r){var t,n;if(Oa(e)||Oa(r)||r<0)return Uj(NaN);return r===0&&$j(e),t=e,n=r*Hj(2),i;function i(o){return Oa(o)||o<0||o>1?NaN:t+n*Bj(2*o-1)}}Fh.exports=jj});var Th=m((Wre,Ph)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wj=ve(),Mh=_h(),Vj=Rh();Wj(Mh,"factory",Vj);Ph.exports=Mh});function yb(e,r){let t=new Map,n=0;for(let i of e){let o=r(i,n++),a=t.get(o);a?a.push(i):t.set(o,[i])}return t}Object.hasOwn(Map,"groupBy")||(Map.groupBy=yb);import{dirname as VV}from"node:path";import{fileURLToPath as GV}from"node:url";import{readdir as Qa,readFile as bb}from"node:fs/promises";import{join as Ga,relative as qb,sep as wb}from"node:path";var Ka="manifest.json";async function Za(e){let r=/^https?:/.test(e)?await Ob(new URL(e)):await Sb(e);if(r.length===0)throw new Error(`No release was found at ${e}; expected a folder with a ${Ka}, or the address of a release or of a house.`);return r}async function Sb(e){return(await Qa(e,{recursive:!0,withFileTypes:!0}).catch(()=>[])).filter(t=>t.isFile()&&t.name===Ka).map(({parentPath:t})=>Nb(t)).sort((t,n)=>t.name<n.name?-1:1)}var Nb=e=>({name:e,read:r=>bb(Ga(e,r)).catch(()=>null),list:async()=>(await Qa(e,{recursive:!0,withFileTypes:!0})).filter(t=>t.isFile()).map(({parentPath:t,name:n})=>qb(e,Ga(t,n)).replaceAll(wb,"/"))});async function Ob(e){if(/\/v1\/releases\/[^/]+\/\d+\/?$/.test(e.pathname))return[Xa(e.href.replace(/\/?$/,"/"))];let r=await Ja(new URL("/v1/releases",e).href);if(!r)return[];let{items:t}=JSON.parse(new TextDecoder().decode(r));return t.map(({edition:n,revision:i})=>Xa(new URL(`/v1/releases/${n}/${i}/`,e).href))}var Xa=e=>({name:e,read:r=>Ja(e+r),list:()=>Promise.resolve(null)});async function Ja(e){let r=await fetch(e);return r.ok?new Uint8Array(await r.arrayBuffer()):null}function Ya(e){let r=new Set(e.map(({digest:t})=>t));return e.flatMap(({edition:t,revision:n,previousDigest:i})=>{let o=(a,s)=>[{file:`${t}/${n}/manifest.json`,where:"/previousDigest",found:a,expected:s}];if(n>1){let a=e.find(s=>s.edition===t&&s.revision===n-1);if(a&&a.digest!==i)return o(String(i),a.digest)}return i===null||r.has(i)?[]:e.length>1?o(i,"the digest of a release that is there"):[]})}import{createPublicKey as TV,verify as CV}from"node:crypto";import{createHash as Ab,randomBytes as tG,randomInt as nG}from"node:crypto";function Ke(e){return Ab("sha256").update(e).digest("hex")}function Eb(e){for(let r=0;r<e.length;r++){let t=e.charCodeAt(r);if(t>=55296&&t<=56319){if(r===e.length-1)return!0;let n=e.charCodeAt(r+1);if(!(n>=56320&&n<=57343))return!0;r++}else if(t>=56320&&t<=57343)return!0}return!1}function Pr(e,r=new Set){if(typeof e=="number"&&isNaN(e))throw new Error("NaN is not allowed");if(typeof e=="number"&&!isFinite(e))throw new Error("Infinity is not allowed");if(typeof e=="string"&&Eb(e))throw new Error("Lone surrogate is not allowed");if(e===null||typeof e!="object")return JSON.stringify(e);if(typeof e.toJSON=="function"){if(r.has(e))throw new Error("Circular reference detected");r.add(e);let n=Pr(e.toJSON(),r);return r.delete(e),n}if(r.has(e))throw new Error("Circular reference detected");r.add(e);let t;if(Array.isArray(e))t=`[${e.map(i=>Pr(i===void 0||typeof i=="symbol"?null:i,r)).join(",")}]`;else{let n=[];for(let i of Object.keys(e).sort())e[i]===void 0||typeof e[i]=="symbol"||n.push(`${Pr(i)}:${Pr(e[i],r)}`);t=`{${n.join(",")}}`}return r.delete(e),t}function Ze(e){let r=Pr(e);if(r===void 0)throw new TypeError("A release holds JSON only; found undefined or a function.");return r}/*!
 *  decimal.js v10.6.0
 *  An arbitrary-precision Decimal type for JavaScript.
 *  https://github.com/MikeMcl/decimal.js
 *  Copyright (c) 2025 Michael Mclaughlin <M8ch88l@gmail.com>
 *  MIT Licence
 */var rt=9e15,cr=1e9,Ki="0123456789abcdef",qn="2.3025850929940456840179914546843642076011014886287729760333279009675726096773524802359972050895982983419677840422862486334095254650828067566662873690987816894829072083255546808437998948262331985283935053089653777326288461633662222876982198867465436674744042432743651550489343149393914796194044002221051017141748003688084012647080685567743216228355220114804663715659121373450747856947683463616792101806445070648000277502684916746550586856935673420670581136429224554405758925724208241314695689016758940256776311356919292033376587141660230105703089634572075440370847469940168269282808481184289314848524948644871927809676271275775397027668605952496716674183485704422507197965004714951050492214776567636938662976979522110718264549734772662425709429322582798502585509785265383207606726317164309505995087807523710333101197857547331541421808427543863591778117054309827482385045648019095610299291824318237525357709750539565187697510374970888692180205189339507238539205144634197265287286965110862571492198849978748873771345686209167058",wn="3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679821480865132823066470938446095505822317253594081284811174502841027019385211055596446229489549303819644288109756659334461284756482337867831652712019091456485669234603486104543266482133936072602491412737245870066063155881748815209209628292540917153643678925903600113305305488204665213841469519415116094330572703657595919530921861173819326117931051185480744623799627495673518857527248912279381830119491298336733624406566430860213949463952247371907021798609437027705392171762931767523846748184676694051320005681271452635608277857713427577896091736371787214684409012249534301465495853710507922796892589235420199561121290219608640344181598136297747713099605187072113499999983729780499510597317328160963185950244594553469083026425223082533446850352619311881710100031378387528865875332083814206171776691473035982534904287554687311595628638823537875937519577818577805321712268066130019278766111959092164201989380952572010654858632789",Zi={precision:20,rounding:4,modulo:1,toExpNeg:-7,toExpPos:21,minE:-rt,maxE:rt,crypto:!1},rs,Je,P=!0,Nn="[DecimalError] ",lr=Nn+"Invalid argument: ",ts=Nn+"Precision limit exceeded",ns=Nn+"crypto unavailable",is="[object Decimal]",fe=Math.floor,te=Math.pow,Ib=/^0b([01]+(\.[01]*)?|\.[01]+)(p[+-]?\d+)?$/i,_b=/^0x([0-9a-f]+(\.[0-9a-f]*)?|\.[0-9a-f]+)(p[+-]?\d+)?$/i,Fb=/^0o([0-7]+(\.[0-7]*)?|\.[0-7]+)(p[+-]?\d+)?$/i,os=/^(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i,Ie=1e7,R=7,Rb=9007199254740991,Mb=qn.length-1,Ji=wn.length-1,w={toStringTag:is};w.absoluteValue=w.abs=function(){var e=new this.constructor(this);return e.s<0&&(e.s=1),F(e)};w.ceil=function(){return F(new this.constructor(this),this.e+1,2)};w.clampedTo=w.clamp=function(e,r){var t,n=this,i=n.constructor;if(e=new i(e),r=new i(r),!e.s||!r.s)return new i(NaN);if(e.gt(r))throw Error(lr+r);return t=n.cmp(e),t<0?e:n.cmp(r)>0?r:new i(n)};w.comparedTo=w.cmp=function(e){var r,t,n,i,o=this,a=o.d,s=(e=new o.constructor(e)).d,u=o.s,l=e.s;if(!a||!s)return!u||!l?NaN:u!==l?u:a===s?0:!a^u<0?1:-1;if(!a[0]||!s[0])return a[0]?u:s[0]?-l:0;if(u!==l)return u;if(o.e!==e.e)return o.e>e.e^u<0?1:-1;for(n=a.length,i=s.length,r=0,t=n<i?n:i;r<t;++r)if(a[r]!==s[r])return a[r]>s[r]^u<0?1:-1;return n===i?0:n>i^u<0?1:-1};w.cosine=w.cos=function(){var e,r,t=this,n=t.constructor;return t.d?t.d[0]?(e=n.precision,r=n.rounding,n.precision=e+Math.max(t.e,t.sd())+R,n.rounding=1,t=Pb(n,cs(n,t)),n.precision=e,n.rounding=r,F(Je==2||Je==3?t.neg():t,e,r,!0)):new n(1):new n(NaN)};w.cubeRoot=w.cbrt=function(){var e,r,t,n,i,o,a,s,u,l,c=this,f=c.constructor;if(!c.isFinite()||c.isZero())return new f(c);for(P=!1,o=c.s*te(c.s*c,1/3),!o||Math.abs(o)==1/0?(t=ue(c.d),e=c.e,(o=(e-t.length+1)%3)&&(t+=o==1||o==-2?"0":"00"),o=te(t,1/3),e=fe((e+1)/3)-(e%3==(e<0?-1:2)),o==1/0?t="5e"+e:(t=o.toExponential(),t=t.slice(0,t.indexOf("e")+1)+e),n=new f(t),n.s=c.s):n=new f(o.toString()),a=(e=f.precision)+3;;)if(s=n,u=s.times(s).times(s),l=u.plus(c),n=j(l.plus(c).times(s),l.plus(u),a+2,1),ue(s.d).slice(0,a)===(t=ue(n.d)).slice(0,a))if(t=t.slice(a-3,a+1),t=="9999"||!i&&t=="4999"){if(!i&&(F(s,e+1,0),s.times(s).times(s).eq(c))){n=s;break}a+=4,i=1}else{(!+t||!+t.slice(1)&&t.charAt(0)=="5")&&(F(n,e+1,1),r=!n.times(n).times(n).eq(c));break}return P=!0,F(n,e,f.rounding,r)};w.decimalPlaces=w.dp=function(){var e,r=this.d,t=NaN;if(r){if(e=r.length-1,t=(e-fe(this.e/R))*R,e=r[e],e)for(;e%10==0;e/=10)t--;t<0&&(t=0)}return t};w.dividedBy=w.div=function(e){return j(this,new this.constructor(e))};w.dividedToIntegerBy=w.divToInt=function(e){var r=this,t=r.constructor;return F(j(r,new t(e),0,1,1),t.precision,t.rounding)};w.equals=w.eq=function(e){return this.cmp(e)===0};w.floor=function(){return F(new this.constructor(this),this.e+1,3)};w.greaterThan=w.gt=function(e){return this.cmp(e)>0};w.greaterThanOrEqualTo=w.gte=function(e){var r=this.cmp(e);return r==1||r===0};w.hyperbolicCosine=w.cosh=function(){var e,r,t,n,i,o=this,a=o.constructor,s=new a(1);if(!o.isFinite())return new a(o.s?1/0:NaN);if(o.isZero())return s;t=a.precision,n=a.rounding,a.precision=t+Math.max(o.e,o.sd())+4,a.rounding=1,i=o.d.length,i<32?(e=Math.ceil(i/3),r=(1/An(4,e)).toString()):(e=16,r="2.3283064365386962890625e-10"),o=tt(a,1,o.times(r),new a(1),!0);for(var u,l=e,c=new a(8);l--;)u=o.times(o),o=s.minus(u.times(c.minus(u.times(c))));return F(o,a.precision=t,a.rounding=n,!0)};w.hyperbolicSine=w.sinh=function(){var e,r,t,n,i=this,o=i.constructor;if(!i.isFinite()||i.isZero())return new o(i);if(r=o.precision,t=o.rounding,o.precision=r+Math.max(i.e,i.sd())+4,o.rounding=1,n=i.d.length,n<3)i=tt(o,2,i,i,!0);else{e=1.4*Math.sqrt(n),e=e>16?16:e|0,i=i.times(1/An(5,e)),i=tt(o,2,i,i,!0);for(var a,s=new o(5),u=new o(16),l=new o(20);e--;)a=i.times(i),i=i.times(s.plus(a.times(u.times(a).plus(l))))}return o.precision=r,o.rounding=t,F(i,r,t,!0)};w.hyperbolicTangent=w.tanh=function(){var e,r,t=this,n=t.constructor;return t.isFinite()?t.isZero()?new n(t):(e=n.precision,r=n.rounding,n.precision=e+7,n.rounding=1,j(t.sinh(),t.cosh(),n.precision=e,n.rounding=r)):new n(t.s)};w.inverseCosine=w.acos=function(){var e=this,r=e.constructor,t=e.abs().cmp(1),n=r.precision,i=r.rounding;return t!==-1?t===0?e.isNeg()?De(r,n,i):new r(0):new r(NaN):e.isZero()?De(r,n+4,i).times(.5):(r.precision=n+6,r.rounding=1,e=new r(1).minus(e).div(e.plus(1)).sqrt().atan(),r.precision=n,r.rounding=i,e.times(2))};w.inverseHyperbolicCosine=w.acosh=function(){var e,r,t=this,n=t.constructor;return t.lte(1)?new n(t.eq(1)?0:NaN):t.isFinite()?(e=n.precision,r=n.rounding,n.precision=e+Math.max(Math.abs(t.e),t.sd())+4,n.rounding=1,P=!1,t=t.times(t).minus(1).sqrt().plus(t),P=!0,n.precision=e,n.rounding=r,t.ln()):new n(t)};w.inverseHyperbolicSine=w.asinh=function(){var e,r,t=this,n=t.constructor;return!t.isFinite()||t.isZero()?new n(t):(e=n.precision,r=n.rounding,n.precision=e+2*Math.max(Math.abs(t.e),t.sd())+6,n.rounding=1,P=!1,t=t.times(t).plus(1).sqrt().plus(t),P=!0,n.precision=e,n.rounding=r,t.ln())};w.inverseHyperbolicTangent=w.atanh=function(){var e,r,t,n,i=this,o=i.constructor;return i.isFinite()?i.e>=0?new o(i.abs().eq(1)?i.s/0:i.isZero()?i:NaN):(e=o.precision,r=o.rounding,n=i.sd(),Math.max(n,e)<2*-i.e-1?F(new o(i),e,r,!0):(o.precision=t=n-i.e,i=j(i.plus(1),new o(1).minus(i),t+e,1),o.precision=e+4,o.rounding=1,i=i.ln(),o.precision=e,o.rounding=r,i.times(.5))):new o(NaN)};w.inverseSine=w.asin=function(){var e,r,t,n,i=this,o=i.constructor;return i.isZero()?new o(i):(r=i.abs().cmp(1),t=o.precision,n=o.rounding,r!==-1?r===0?(e=De(o,t+4,n).times(.5),e.s=i.s,e):new o(NaN):(o.precision=t+6,o.rounding=1,i=i.div(new o(1).minus(i.times(i)).sqrt().plus(1)).atan(),o.precision=t,o.rounding=n,i.times(2)))};w.inverseTangent=w.atan=function(){var e,r,t,n,i,o,a,s,u,l=this,c=l.constructor,f=c.precision,d=c.rounding;if(l.isFinite()){if(l.isZero())return new c(l);if(l.abs().eq(1)&&f+4<=Ji)return a=De(c,f+4,d).times(.25),a.s=l.s,a}else{if(!l.s)return new c(NaN);if(f+4<=Ji)return a=De(c,f+4,d).times(.5),a.s=l.s,a}for(c.precision=s=f+10,c.rounding=1,t=Math.min(28,s/R+2|0),e=t;e;--e)l=l.div(l.times(l).plus(1).sqrt().plus(1));for(P=!1,r=Math.ceil(s/R),n=1,u=l.times(l),a=new c(l),i=l;e!==-1;)if(i=i.times(u),o=a.minus(i.div(n+=2)),i=i.times(u),a=o.plus(i.div(n+=2)),a.d[r]!==void 0)for(e=r;a.d[e]===o.d[e]&&e--;);return t&&(a=a.times(2<<t-1)),P=!0,F(a,c.precision=f,c.rounding=d,!0)};w.isFinite=function(){return!!this.d};w.isInteger=w.isInt=function(){return!!this.d&&fe(this.e/R)>this.d.length-2};w.isNaN=function(){return!this.s};w.isNegative=w.isNeg=function(){return this.s<0};w.isPositive=w.isPos=function(){return this.s>0};w.isZero=function(){return!!this.d&&this.d[0]===0};w.lessThan=w.lt=function(e){return this.cmp(e)<0};w.lessThanOrEqualTo=w.lte=function(e){return this.cmp(e)<1};w.logarithm=w.log=function(e){var r,t,n,i,o,a,s,u,l=this,c=l.constructor,f=c.precision,d=c.rounding,p=5;if(e==null)e=new c(10),r=!0;else{if(e=new c(e),t=e.d,e.s<0||!t||!t[0]||e.eq(1))return new c(NaN);r=e.eq(10)}if(t=l.d,l.s<0||!t||!t[0]||l.eq(1))return new c(t&&!t[0]?-1/0:l.s!=1?NaN:t?0:1/0);if(r)if(t.length>1)o=!0;else{for(i=t[0];i%10===0;)i/=10;o=i!==1}if(P=!1,s=f+p,a=ur(l,s),n=r?Sn(c,s+10):ur(e,s),u=j(a,n,s,1),Rt(u.d,i=f,d))do if(s+=10,a=ur(l,s),n=r?Sn(c,s+10):ur(e,s),u=j(a,n,s,1),!o){+ue(u.d).slice(i+1,i+15)+1==1e14&&(u=F(u,f+1,0));break}while(Rt(u.d,i+=10,d));return P=!0,F(u,f,d)};w.minus=w.sub=function(e){var r,t,n,i,o,a,s,u,l,c,f,d,p=this,v=p.constructor;if(e=new v(e),!p.d||!e.d)return!p.s||!e.s?e=new v(NaN):p.d?e.s=-e.s:e=new v(e.d||p.s!==e.s?p:NaN),e;if(p.s!=e.s)return e.s=-e.s,p.plus(e);if(l=p.d,d=e.d,s=v.precision,u=v.rounding,!l[0]||!d[0]){if(d[0])e.s=-e.s;else if(l[0])e=new v(p);else return new v(u===3?-0:0);return P?F(e,s,u):e}if(t=fe(e.e/R),c=fe(p.e/R),l=l.slice(),o=c-t,o){for(f=o<0,f?(r=l,o=-o,a=d.length):(r=d,t=c,a=l.length),n=Math.max(Math.ceil(s/R),a)+2,o>n&&(o=n,r.length=1),r.reverse(),n=o;n--;)r.push(0);r.reverse()}else{for(n=l.length,a=d.length,f=n<a,f&&(a=n),n=0;n<a;n++)if(l[n]!=d[n]){f=l[n]<d[n];break}o=0}for(f&&(r=l,l=d,d=r,e.s=-e.s),a=l.length,n=d.length-a;n>0;--n)l[a++]=0;for(n=d.length;n>o;){if(l[--n]<d[n]){for(i=n;i&&l[--i]===0;)l[i]=Ie-1;--l[i],l[n]+=Ie}l[n]-=d[n]}for(;l[--a]===0;)l.pop();for(;l[0]===0;l.shift())--t;return l[0]?(e.d=l,e.e=On(l,t),P?F(e,s,u):e):new v(u===3?-0:0)};w.modulo=w.mod=function(e){var r,t=this,n=t.constructor;return e=new n(e),!t.d||!e.s||e.d&&!e.d[0]?new n(NaN):!e.d||t.d&&!t.d[0]?F(new n(t),n.precision,n.rounding):(P=!1,n.modulo==9?(r=j(t,e.abs(),0,3,1),r.s*=e.s):r=j(t,e,0,n.modulo,1),r=r.times(e),P=!0,t.minus(r))};w.naturalExponential=w.exp=function(){return Yi(this)};w.naturalLogarithm=w.ln=function(){return ur(this)};w.negated=w.neg=function(){var e=new this.constructor(this);return e.s=-e.s,F(e)};w.plus=w.add=function(e){var r,t,n,i,o,a,s,u,l,c,f=this,d=f.constructor;if(e=new d(e),!f.d||!e.d)return!f.s||!e.s?e=new d(NaN):f.d||(e=new d(e.d||f.s===e.s?f:NaN)),e;if(f.s!=e.s)return e.s=-e.s,f.minus(e);if(l=f.d,c=e.d,s=d.precision,u=d.rounding,!l[0]||!c[0])return c[0]||(e=new d(f)),P?F(e,s,u):e;if(o=fe(f.e/R),n=fe(e.e/R),l=l.slice(),i=o-n,i){for(i<0?(t=l,i=-i,a=c.length):(t=c,n=o,a=l.length),o=Math.ceil(s/R),a=o>a?o+1:a+1,i>a&&(i=a,t.length=1),t.reverse();i--;)t.push(0);t.reverse()}for(a=l.length,i=c.length,a-i<0&&(i=a,t=c,c=l,l=t),r=0;i;)r=(l[--i]=l[i]+c[i]+r)/Ie|0,l[i]%=Ie;for(r&&(l.unshift(r),++n),a=l.length;l[--a]==0;)l.pop();return e.d=l,e.e=On(l,n),P?F(e,s,u):e};w.precision=w.sd=function(e){var r,t=this;if(e!==void 0&&e!==!!e&&e!==1&&e!==0)throw Error(lr+e);return t.d?(r=as(t.d),e&&t.e+1>r&&(r=t.e+1)):r=NaN,r};w.round=function(){var e=this,r=e.constructor;return F(new r(e),e.e+1,r.rounding)};w.sine=w.sin=function(){var e,r,t=this,n=t.constructor;return t.isFinite()?t.isZero()?new n(t):(e=n.precision,r=n.rounding,n.precision=e+Math.max(t.e,t.sd())+R,n.rounding=1,t=Cb(n,cs(n,t)),n.precision=e,n.rounding=r,F(Je>2?t.neg():t,e,r,!0)):new n(NaN)};w.squareRoot=w.sqrt=function(){var e,r,t,n,i,o,a=this,s=a.d,u=a.e,l=a.s,c=a.constructor;if(l!==1||!s||!s[0])return new c(!l||l<0&&(!s||s[0])?NaN:s?a:1/0);for(P=!1,l=Math.sqrt(+a),l==0||l==1/0?(r=ue(s),(r.length+u)%2==0&&(r+="0"),l=Math.sqrt(r),u=fe((u+1)/2)-(u<0||u%2),l==1/0?r="5e"+u:(r=l.toExponential(),r=r.slice(0,r.indexOf("e")+1)+u),n=new c(r)):n=new c(l.toString()),t=(u=c.precision)+3;;)if(o=n,n=o.plus(j(a,o,t+2,1)).times(.5),ue(o.d).slice(0,t)===(r=ue(n.d)).slice(0,t))if(r=r.slice(t-3,t+1),r=="9999"||!i&&r=="4999"){if(!i&&(F(o,u+1,0),o.times(o).eq(a))){n=o;break}t+=4,i=1}else{(!+r||!+r.slice(1)&&r.charAt(0)=="5")&&(F(n,u+1,1),e=!n.times(n).eq(a));break}return P=!0,F(n,u,c.rounding,e)};w.tangent=w.tan=function(){var e,r,t=this,n=t.constructor;return t.isFinite()?t.isZero()?new n(t):(e=n.precision,r=n.rounding,n.precision=e+10,n.rounding=1,t=t.sin(),t.s=1,t=j(t,new n(1).minus(t.times(t)).sqrt(),e+10,0),n.precision=e,n.rounding=r,F(Je==2||Je==4?t.neg():t,e,r,!0)):new n(NaN)};w.times=w.mul=function(e){var r,t,n,i,o,a,s,u,l,c=this,f=c.constructor,d=c.d,p=(e=new f(e)).d;if(e.s*=c.s,!d||!d[0]||!p||!p[0])return new f(!e.s||d&&!d[0]&&!p||p&&!p[0]&&!d?NaN:!d||!p?e.s/0:e.s*0);for(t=fe(c.e/R)+fe(e.e/R),u=d.length,l=p.length,u<l&&(o=d,d=p,p=o,a=u,u=l,l=a),o=[],a=u+l,n=a;n--;)o.push(0);for(n=l;--n>=0;){for(r=0,i=u+n;i>n;)s=o[i]+p[n]*d[i-n-1]+r,o[i--]=s%Ie|0,r=s/Ie|0;o[i]=(o[i]+r)%Ie|0}for(;!o[--a];)o.pop();return r?++t:o.shift(),e.d=o,e.e=On(o,t),P?F(e,f.precision,f.rounding):e};w.toBinary=function(e,r){return zi(this,2,e,r)};w.toDecimalPlaces=w.toDP=function(e,r){var t=this,n=t.constructor;return t=new n(t),e===void 0?t:(he(e,0,cr),r===void 0?r=n.rounding:he(r,0,8),F(t,e+t.e+1,r))};w.toExponential=function(e,r){var t,n=this,i=n.constructor;return e===void 0?t=Le(n,!0):(he(e,0,cr),r===void 0?r=i.rounding:he(r,0,8),n=F(new i(n),e+1,r),t=Le(n,!0,e+1)),n.isNeg()&&!n.isZero()?"-"+t:t};w.toFixed=function(e,r){var t,n,i=this,o=i.constructor;return e===void 0?t=Le(i):(he(e,0,cr),r===void 0?r=o.rounding:he(r,0,8),n=F(new o(i),e+i.e+1,r),t=Le(n,!1,e+n.e+1)),i.isNeg()&&!i.isZero()?"-"+t:t};w.toFraction=function(e){var r,t,n,i,o,a,s,u,l,c,f,d,p=this,v=p.d,g=p.constructor;if(!v)return new g(p);if(l=t=new g(1),n=u=new g(0),r=new g(n),o=r.e=as(v)-p.e-1,a=o%R,r.d[0]=te(10,a<0?R+a:a),e==null)e=o>0?r:l;else{if(s=new g(e),!s.isInt()||s.lt(l))throw Error(lr+s);e=s.gt(r)?o>0?r:l:s}for(P=!1,s=new g(ue(v)),c=g.precision,g.precision=o=v.length*R*2;f=j(s,r,0,1,1),i=t.plus(f.times(n)),i.cmp(e)!=1;)t=n,n=i,i=l,l=u.plus(f.times(i)),u=i,i=r,r=s.minus(f.times(i)),s=i;return i=j(e.minus(t),n,0,1,1),u=u.plus(i.times(l)),t=t.plus(i.times(n)),u.s=l.s=p.s,d=j(l,n,o,1).minus(p).abs().cmp(j(u,t,o,1).minus(p).abs())<1?[l,n]:[u,t],g.precision=c,P=!0,d};w.toHexadecimal=w.toHex=function(e,r){return zi(this,16,e,r)};w.toNearest=function(e,r){var t=this,n=t.constructor;if(t=new n(t),e==null){if(!t.d)return t;e=new n(1),r=n.rounding}else{if(e=new n(e),r===void 0?r=n.rounding:he(r,0,8),!t.d)return e.s?t:e;if(!e.d)return e.s&&(e.s=t.s),e}return e.d[0]?(P=!1,t=j(t,e,0,r,1).times(e),P=!0,F(t)):(e.s=t.s,t=e),t};w.toNumber=function(){return+this};w.toOctal=function(e,r){return zi(this,8,e,r)};w.toPower=w.pow=function(e){var r,t,n,i,o,a,s=this,u=s.constructor,l=+(e=new u(e));if(!s.d||!e.d||!s.d[0]||!e.d[0])return new u(te(+s,l));if(s=new u(s),s.eq(1))return s;if(n=u.precision,o=u.rounding,e.eq(1))return F(s,n,o);if(r=fe(e.e/R),r>=e.d.length-1&&(t=l<0?-l:l)<=Rb)return i=ss(u,s,t,n),e.s<0?new u(1).div(i):F(i,n,o);if(a=s.s,a<0){if(r<e.d.length-1)return new u(NaN);if((e.d[r]&1)==0&&(a=1),s.e==0&&s.d[0]==1&&s.d.length==1)return s.s=a,s}return t=te(+s,l),r=t==0||!isFinite(t)?fe(l*(Math.log("0."+ue(s.d))/Math.LN10+s.e+1)):new u(t+"").e,r>u.maxE+1||r<u.minE-1?new u(r>0?a/0:0):(P=!1,u.rounding=s.s=1,t=Math.min(12,(r+"").length),i=Yi(e.times(ur(s,n+t)),n),i.d&&(i=F(i,n+5,1),Rt(i.d,n,o)&&(r=n+10,i=F(Yi(e.times(ur(s,r+t)),r),r+5,1),+ue(i.d).slice(n+1,n+15)+1==1e14&&(i=F(i,n+1,0)))),i.s=a,P=!0,u.rounding=o,F(i,n,o))};w.toPrecision=function(e,r){var t,n=this,i=n.constructor;return e===void 0?t=Le(n,n.e<=i.toExpNeg||n.e>=i.toExpPos):(he(e,1,cr),r===void 0?r=i.rounding:he(r,0,8),n=F(new i(n),e,r),t=Le(n,e<=n.e||n.e<=i.toExpNeg,e)),n.isNeg()&&!n.isZero()?"-"+t:t};w.toSignificantDigits=w.toSD=function(e,r){var t=this,n=t.constructor;return e===void 0?(e=n.precision,r=n.rounding):(he(e,1,cr),r===void 0?r=n.rounding:he(r,0,8)),F(new n(t),e,r)};w.toString=function(){var e=this,r=e.constructor,t=Le(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()&&!e.isZero()?"-"+t:t};w.truncated=w.trunc=function(){return F(new this.constructor(this),this.e+1,1)};w.valueOf=w.toJSON=function(){var e=this,r=e.constructor,t=Le(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()?"-"+t:t};function ue(e){var r,t,n,i=e.length-1,o="",a=e[0];if(i>0){for(o+=a,r=1;r<i;r++)n=e[r]+"",t=R-n.length,t&&(o+=sr(t)),o+=n;a=e[r],n=a+"",t=R-n.length,t&&(o+=sr(t))}else if(a===0)return"0";for(;a%10===0;)a/=10;return o+a}function he(e,r,t){if(e!==~~e||e<r||e>t)throw Error(lr+e)}function Rt(e,r,t,n){var i,o,a,s;for(o=e[0];o>=10;o/=10)--r;return--r<0?(r+=R,i=0):(i=Math.ceil((r+1)/R),r%=R),o=te(10,R-r),s=e[i]%o|0,n==null?r<3?(r==0?s=s/100|0:r==1&&(s=s/10|0),a=t<4&&s==99999||t>3&&s==49999||s==5e4||s==0):a=(t<4&&s+1==o||t>3&&s+1==o/2)&&(e[i+1]/o/100|0)==te(10,r-2)-1||(s==o/2||s==0)&&(e[i+1]/o/100|0)==0:r<4?(r==0?s=s/1e3|0:r==1?s=s/100|0:r==2&&(s=s/10|0),a=(n||t<4)&&s==9999||!n&&t>3&&s==4999):a=((n||t<4)&&s+1==o||!n&&t>3&&s+1==o/2)&&(e[i+1]/o/1e3|0)==te(10,r-3)-1,a}function yn(e,r,t){for(var n,i=[0],o,a=0,s=e.length;a<s;){for(o=i.length;o--;)i[o]*=r;for(i[0]+=Ki.indexOf(e.charAt(a++)),n=0;n<i.length;n++)i[n]>t-1&&(i[n+1]===void 0&&(i[n+1]=0),i[n+1]+=i[n]/t|0,i[n]%=t)}return i.reverse()}function Pb(e,r){var t,n,i;if(r.isZero())return r;n=r.d.length,n<32?(t=Math.ceil(n/3),i=(1/An(4,t)).toString()):(t=16,i="2.3283064365386962890625e-10"),e.precision+=t,r=tt(e,1,r.times(i),new e(1));for(var o=t;o--;){var a=r.times(r);r=a.times(a).minus(a).times(8).plus(1)}return e.precision-=t,r}var j=(function(){function e(n,i,o){var a,s=0,u=n.length;for(n=n.slice();u--;)a=n[u]*i+s,n[u]=a%o|0,s=a/o|0;return s&&n.unshift(s),n}function r(n,i,o,a){var s,u;if(o!=a)u=o>a?1:-1;else for(s=u=0;s<o;s++)if(n[s]!=i[s]){u=n[s]>i[s]?1:-1;break}return u}function t(n,i,o,a){for(var s=0;o--;)n[o]-=s,s=n[o]<i[o]?1:0,n[o]=s*a+n[o]-i[o];for(;!n[0]&&n.length>1;)n.shift()}return function(n,i,o,a,s,u){var l,c,f,d,p,v,g,y,h,q,b,N,O,I,A,M,C,K,W,G,z=n.constructor,ne=n.s==i.s?1:-1,S=n.d,_=i.d;if(!S||!S[0]||!_||!_[0])return new z(!n.s||!i.s||(S?_&&S[0]==_[0]:!_)?NaN:S&&S[0]==0||!_?ne*0:ne/0);for(u?(p=1,c=n.e-i.e):(u=Ie,p=R,c=fe(n.e/p)-fe(i.e/p)),W=_.length,C=S.length,h=new z(ne),q=h.d=[],f=0;_[f]==(S[f]||0);f++);if(_[f]>(S[f]||0)&&c--,o==null?(I=o=z.precision,a=z.rounding):s?I=o+(n.e-i.e)+1:I=o,I<0)q.push(1),v=!0;else{if(I=I/p+2|0,f=0,W==1){for(d=0,_=_[0],I++;(f<C||d)&&I--;f++)A=d*u+(S[f]||0),q[f]=A/_|0,d=A%_|0;v=d||f<C}else{for(d=u/(_[0]+1)|0,d>1&&(_=e(_,d,u),S=e(S,d,u),W=_.length,C=S.length),M=W,b=S.slice(0,W),N=b.length;N<W;)b[N++]=0;G=_.slice(),G.unshift(0),K=_[0],_[1]>=u/2&&++K;do d=0,l=r(_,b,W,N),l<0?(O=b[0],W!=N&&(O=O*u+(b[1]||0)),d=O/K|0,d>1?(d>=u&&(d=u-1),g=e(_,d,u),y=g.length,N=b.length,l=r(g,b,y,N),l==1&&(d--,t(g,W<y?G:_,y,u))):(d==0&&(l=d=1),g=_.slice()),y=g.length,y<N&&g.unshift(0),t(b,g,N,u),l==-1&&(N=b.length,l=r(_,b,W,N),l<1&&(d++,t(b,W<N?G:_,N,u))),N=b.length):l===0&&(d++,b=[0]),q[f++]=d,l&&b[0]?b[N++]=S[M]||0:(b=[S[M]],N=1);while((M++<C||b[0]!==void 0)&&I--);v=b[0]!==void 0}q[0]||q.shift()}if(p==1)h.e=c,rs=v;else{for(f=1,d=q[0];d>=10;d/=10)f++;h.e=f+c*p-1,F(h,s?o+h.e+1:o,a,v)}return h}})();function F(e,r,t,n){var i,o,a,s,u,l,c,f,d,p=e.constructor;e:if(r!=null){if(f=e.d,!f)return e;for(i=1,s=f[0];s>=10;s/=10)i++;if(o=r-i,o<0)o+=R,a=r,c=f[d=0],u=c/te(10,i-a-1)%10|0;else if(d=Math.ceil((o+1)/R),s=f.length,d>=s)if(n){for(;s++<=d;)f.push(0);c=u=0,i=1,o%=R,a=o-R+1}else break e;else{for(c=s=f[d],i=1;s>=10;s/=10)i++;o%=R,a=o-R+i,u=a<0?0:c/te(10,i-a-1)%10|0}if(n=n||r<0||f[d+1]!==void 0||(a<0?c:c%te(10,i-a-1)),l=t<4?(u||n)&&(t==0||t==(e.s<0?3:2)):u>5||u==5&&(t==4||n||t==6&&(o>0?a>0?c/te(10,i-a):0:f[d-1])%10&1||t==(e.s<0?8:7)),r<1||!f[0])return f.length=0,l?(r-=e.e+1,f[0]=te(10,(R-r%R)%R),e.e=-r||0):f[0]=e.e=0,e;if(o==0?(f.length=d,s=1,d--):(f.length=d+1,s=te(10,R-o),f[d]=a>0?(c/te(10,i-a)%te(10,a)|0)*s:0),l)for(;;)if(d==0){for(o=1,a=f[0];a>=10;a/=10)o++;for(a=f[0]+=s,s=1;a>=10;a/=10)s++;o!=s&&(e.e++,f[0]==Ie&&(f[0]=1));break}else{if(f[d]+=s,f[d]!=Ie)break;f[d--]=0,s=1}for(o=f.length;f[--o]===0;)f.pop()}return P&&(e.e>p.maxE?(e.d=null,e.e=NaN):e.e<p.minE&&(e.e=0,e.d=[0])),e}function Le(e,r,t){if(!e.isFinite())return ls(e);var n,i=e.e,o=ue(e.d),a=o.length;return r?(t&&(n=t-a)>0?o=o.charAt(0)+"."+o.slice(1)+sr(n):a>1&&(o=o.charAt(0)+"."+o.slice(1)),o=o+(e.e<0?"e":"e+")+e.e):i<0?(o="0."+sr(-i-1)+o,t&&(n=t-a)>0&&(o+=sr(n))):i>=a?(o+=sr(i+1-a),t&&(n=t-i-1)>0&&(o=o+"."+sr(n))):((n=i+1)<a&&(o=o.slice(0,n)+"."+o.slice(n)),t&&(n=t-a)>0&&(i+1===a&&(o+="."),o+=sr(n))),o}function On(e,r){var t=e[0];for(r*=R;t>=10;t/=10)r++;return r}function Sn(e,r,t){if(r>Mb)throw P=!0,t&&(e.precision=t),Error(ts);return F(new e(qn),r,1,!0)}function De(e,r,t){if(r>Ji)throw Error(ts);return F(new e(wn),r,t,!0)}function as(e){var r=e.length-1,t=r*R+1;if(r=e[r],r){for(;r%10==0;r/=10)t--;for(r=e[0];r>=10;r/=10)t++}return t}function sr(e){for(var r="";e--;)r+="0";return r}function ss(e,r,t,n){var i,o=new e(1),a=Math.ceil(n/R+4);for(P=!1;;){if(t%2&&(o=o.times(r),xa(o.d,a)&&(i=!0)),t=fe(t/2),t===0){t=o.d.length-1,i&&o.d[t]===0&&++o.d[t];break}r=r.times(r),xa(r.d,a)}return P=!0,o}function za(e){return e.d[e.d.length-1]&1}function us(e,r,t){for(var n,i,o=new e(r[0]),a=0;++a<r.length;){if(i=new e(r[a]),!i.s){o=i;break}n=o.cmp(i),(n===t||n===0&&o.s===t)&&(o=i)}return o}function Yi(e,r){var t,n,i,o,a,s,u,l=0,c=0,f=0,d=e.constructor,p=d.rounding,v=d.precision;if(!e.d||!e.d[0]||e.e>17)return new d(e.d?e.d[0]?e.s<0?0:1/0:1:e.s?e.s<0?0:e:NaN);for(r==null?(P=!1,u=v):u=r,s=new d(.03125);e.e>-2;)e=e.times(s),f+=5;for(n=Math.log(te(2,f))/Math.LN10*2+5|0,u+=n,t=o=a=new d(1),d.precision=u;;){if(o=F(o.times(e),u,1),t=t.times(++c),s=a.plus(j(o,t,u,1)),ue(s.d).slice(0,u)===ue(a.d).slice(0,u)){for(i=f;i--;)a=F(a.times(a),u,1);if(r==null)if(l<3&&Rt(a.d,u-n,p,l))d.precision=u+=10,t=o=s=new d(1),c=0,l++;else return F(a,d.precision=v,p,P=!0);else return d.precision=v,a}a=s}}function ur(e,r){var t,n,i,o,a,s,u,l,c,f,d,p=1,v=10,g=e,y=g.d,h=g.constructor,q=h.rounding,b=h.precision;if(g.s<0||!y||!y[0]||!g.e&&y[0]==1&&y.length==1)return new h(y&&!y[0]?-1/0:g.s!=1?NaN:y?0:g);if(r==null?(P=!1,c=b):c=r,h.precision=c+=v,t=ue(y),n=t.charAt(0),Math.abs(o=g.e)<15e14){for(;n<7&&n!=1||n==1&&t.charAt(1)>3;)g=g.times(e),t=ue(g.d),n=t.charAt(0),p++;o=g.e,n>1?(g=new h("0."+t),o++):g=new h(n+"."+t.slice(1))}else return l=Sn(h,c+2,b).times(o+""),g=ur(new h(n+"."+t.slice(1)),c-v).plus(l),h.precision=b,r==null?F(g,b,q,P=!0):g;for(f=g,u=a=g=j(g.minus(1),g.plus(1),c,1),d=F(g.times(g),c,1),i=3;;){if(a=F(a.times(d),c,1),l=u.plus(j(a,new h(i),c,1)),ue(l.d).slice(0,c)===ue(u.d).slice(0,c))if(u=u.times(2),o!==0&&(u=u.plus(Sn(h,c+2,b).times(o+""))),u=j(u,new h(p),c,1),r==null)if(Rt(u.d,c-v,q,s))h.precision=c+=v,l=a=g=j(f.minus(1),f.plus(1),c,1),d=F(g.times(g),c,1),i=s=1;else return F(u,h.precision=b,q,P=!0);else return h.precision=b,u;u=l,i+=2}}function ls(e){return String(e.s*e.s/0)}function bn(e,r){var t,n,i;for((t=r.indexOf("."))>-1&&(r=r.replace(".","")),(n=r.search(/e/i))>0?(t<0&&(t=n),t+=+r.slice(n+1),r=r.substring(0,n)):t<0&&(t=r.length),n=0;r.charCodeAt(n)===48;n++);for(i=r.length;r.charCodeAt(i-1)===48;--i);if(r=r.slice(n,i),r){if(i-=n,e.e=t=t-n-1,e.d=[],n=(t+1)%R,t<0&&(n+=R),n<i){for(n&&e.d.push(+r.slice(0,n)),i-=R;n<i;)e.d.push(+r.slice(n,n+=R));r=r.slice(n),n=R-r.length}else n-=i;for(;n--;)r+="0";e.d.push(+r),P&&(e.e>e.constructor.maxE?(e.d=null,e.e=NaN):e.e<e.constructor.minE&&(e.e=0,e.d=[0]))}else e.e=0,e.d=[0];return e}function Tb(e,r){var t,n,i,o,a,s,u,l,c;if(r.indexOf("_")>-1){if(r=r.replace(/(\d)_(?=\d)/g,"$1"),os.test(r))return bn(e,r)}else if(r==="Infinity"||r==="NaN")return+r||(e.s=NaN),e.e=NaN,e.d=null,e;if(_b.test(r))t=16,r=r.toLowerCase();else if(Ib.test(r))t=2;else if(Fb.test(r))t=8;else throw Error(lr+r);for(o=r.search(/p/i),o>0?(u=+r.slice(o+1),r=r.substring(2,o)):r=r.slice(2),o=r.indexOf("."),a=o>=0,n=e.constructor,a&&(r=r.replace(".",""),s=r.length,o=s-o,i=ss(n,new n(t),o,o*2)),l=yn(r,t,Ie),c=l.length-1,o=c;l[o]===0;--o)l.pop();return o<0?new n(e.s*0):(e.e=On(l,c),e.d=l,P=!1,a&&(e=j(e,i,s*4)),u&&(e=e.times(Math.abs(u)<54?te(2,u):x.pow(2,u))),P=!0,e)}function Cb(e,r){var t,n=r.d.length;if(n<3)return r.isZero()?r:tt(e,2,r,r);t=1.4*Math.sqrt(n),t=t>16?16:t|0,r=r.times(1/An(5,t)),r=tt(e,2,r,r);for(var i,o=new e(5),a=new e(16),s=new e(20);t--;)i=r.times(r),r=r.times(o.plus(i.times(a.times(i).minus(s))));return r}function tt(e,r,t,n,i){var o,a,s,u,l=1,c=e.precision,f=Math.ceil(c/R);for(P=!1,u=t.times(t),s=new e(n);;){if(a=j(s.times(u),new e(r++*r++),c,1),s=i?n.plus(a):n.minus(a),n=j(a.times(u),new e(r++*r++),c,1),a=s.plus(n),a.d[f]!==void 0){for(o=f;a.d[o]===s.d[o]&&o--;);if(o==-1)break}o=s,s=n,n=a,a=o,l++}return P=!0,a.d.length=f+1,a}function An(e,r){for(var t=e;--r;)t*=e;return t}function cs(e,r){var t,n=r.s<0,i=De(e,e.precision,1),o=i.times(.5);if(r=r.abs(),r.lte(o))return Je=n?4:1,r;if(t=r.divToInt(i),t.isZero())Je=n?3:2;else{if(r=r.minus(t.times(i)),r.lte(o))return Je=za(t)?n?2:3:n?4:1,r;Je=za(t)?n?1:4:n?3:2}return r.minus(i).abs()}function zi(e,r,t,n){var i,o,a,s,u,l,c,f,d,p=e.constructor,v=t!==void 0;if(v?(he(t,1,cr),n===void 0?n=p.rounding:he(n,0,8)):(t=p.precision,n=p.rounding),!e.isFinite())c=ls(e);else{for(c=Le(e),a=c.indexOf("."),v?(i=2,r==16?t=t*4-3:r==8&&(t=t*3-2)):i=r,a>=0&&(c=c.replace(".",""),d=new p(1),d.e=c.length-a,d.d=yn(Le(d),10,i),d.e=d.d.length),f=yn(c,10,i),o=u=f.length;f[--u]==0;)f.pop();if(!f[0])c=v?"0p+0":"0";else{if(a<0?o--:(e=new p(e),e.d=f,e.e=o,e=j(e,d,t,n,0,i),f=e.d,o=e.e,l=rs),a=f[t],s=i/2,l=l||f[t+1]!==void 0,l=n<4?(a!==void 0||l)&&(n===0||n===(e.s<0?3:2)):a>s||a===s&&(n===4||l||n===6&&f[t-1]&1||n===(e.s<0?8:7)),f.length=t,l)for(;++f[--t]>i-1;)f[t]=0,t||(++o,f.unshift(1));for(u=f.length;!f[u-1];--u);for(a=0,c="";a<u;a++)c+=Ki.charAt(f[a]);if(v){if(u>1)if(r==16||r==8){for(a=r==16?4:3,--u;u%a;u++)c+="0";for(f=yn(c,i,r),u=f.length;!f[u-1];--u);for(a=1,c="1.";a<u;a++)c+=Ki.charAt(f[a])}else c=c.charAt(0)+"."+c.slice(1);c=c+(o<0?"p":"p+")+o}else if(o<0){for(;++o;)c="0"+c;c="0."+c}else if(++o>u)for(o-=u;o--;)c+="0";else o<u&&(c=c.slice(0,o)+"."+c.slice(o))}c=(r==16?"0x":r==2?"0b":r==8?"0o":"")+c}return e.s<0?"-"+c:c}function xa(e,r){if(e.length>r)return e.length=r,!0}function Db(e){return new this(e).abs()}function Lb(e){return new this(e).acos()}function kb(e){return new this(e).acosh()}function Ub(e,r){return new this(e).plus(r)}function $b(e){return new this(e).asin()}function Bb(e){return new this(e).asinh()}function Hb(e){return new this(e).atan()}function jb(e){return new this(e).atanh()}function Wb(e,r){e=new this(e),r=new this(r);var t,n=this.precision,i=this.rounding,o=n+4;return!e.s||!r.s?t=new this(NaN):!e.d&&!r.d?(t=De(this,o,1).times(r.s>0?.25:.75),t.s=e.s):!r.d||e.isZero()?(t=r.s<0?De(this,n,i):new this(0),t.s=e.s):!e.d||r.isZero()?(t=De(this,o,1).times(.5),t.s=e.s):r.s<0?(this.precision=o,this.rounding=1,t=this.atan(j(e,r,o,1)),r=De(this,o,1),this.precision=n,this.rounding=i,t=e.s<0?t.minus(r):t.plus(r)):t=this.atan(j(e,r,o,1)),t}function Vb(e){return new this(e).cbrt()}function Gb(e){return F(e=new this(e),e.e+1,2)}function Xb(e,r,t){return new this(e).clamp(r,t)}function Qb(e){if(!e||typeof e!="object")throw Error(Nn+"Object expected");var r,t,n,i=e.defaults===!0,o=["precision",1,cr,"rounding",0,8,"toExpNeg",-rt,0,"toExpPos",0,rt,"maxE",0,rt,"minE",-rt,0,"modulo",0,9];for(r=0;r<o.length;r+=3)if(t=o[r],i&&(this[t]=Zi[t]),(n=e[t])!==void 0)if(fe(n)===n&&n>=o[r+1]&&n<=o[r+2])this[t]=n;else throw Error(lr+t+": "+n);if(t="crypto",i&&(this[t]=Zi[t]),(n=e[t])!==void 0)if(n===!0||n===!1||n===0||n===1)if(n)if(typeof crypto<"u"&&crypto&&(crypto.getRandomValues||crypto.randomBytes))this[t]=!0;else throw Error(ns);else this[t]=!1;else throw Error(lr+t+": "+n);return this}function Kb(e){return new this(e).cos()}function Zb(e){return new this(e).cosh()}function fs(e){var r,t,n;function i(o){var a,s,u,l=this;if(!(l instanceof i))return new i(o);if(l.constructor=i,es(o)){l.s=o.s,P?!o.d||o.e>i.maxE?(l.e=NaN,l.d=null):o.e<i.minE?(l.e=0,l.d=[0]):(l.e=o.e,l.d=o.d.slice()):(l.e=o.e,l.d=o.d?o.d.slice():o.d);return}if(u=typeof o,u==="number"){if(o===0){l.s=1/o<0?-1:1,l.e=0,l.d=[0];return}if(o<0?(o=-o,l.s=-1):l.s=1,o===~~o&&o<1e7){for(a=0,s=o;s>=10;s/=10)a++;P?a>i.maxE?(l.e=NaN,l.d=null):a<i.minE?(l.e=0,l.d=[0]):(l.e=a,l.d=[o]):(l.e=a,l.d=[o]);return}if(o*0!==0){o||(l.s=NaN),l.e=NaN,l.d=null;return}return bn(l,o.toString())}if(u==="string")return(s=o.charCodeAt(0))===45?(o=o.slice(1),l.s=-1):(s===43&&(o=o.slice(1)),l.s=1),os.test(o)?bn(l,o):Tb(l,o);if(u==="bigint")return o<0?(o=-o,l.s=-1):l.s=1,bn(l,o.toString());throw Error(lr+o)}if(i.prototype=w,i.ROUND_UP=0,i.ROUND_DOWN=1,i.ROUND_CEIL=2,i.ROUND_FLOOR=3,i.ROUND_HALF_UP=4,i.ROUND_HALF_DOWN=5,i.ROUND_HALF_EVEN=6,i.ROUND_HALF_CEIL=7,i.ROUND_HALF_FLOOR=8,i.EUCLID=9,i.config=i.set=Qb,i.clone=fs,i.isDecimal=es,i.abs=Db,i.acos=Lb,i.acosh=kb,i.add=Ub,i.asin=$b,i.asinh=Bb,i.atan=Hb,i.atanh=jb,i.atan2=Wb,i.cbrt=Vb,i.ceil=Gb,i.clamp=Xb,i.cos=Kb,i.cosh=Zb,i.div=Jb,i.exp=Yb,i.floor=zb,i.hypot=xb,i.ln=eq,i.log=rq,i.log10=nq,i.log2=tq,i.max=iq,i.min=oq,i.mod=aq,i.mul=sq,i.pow=uq,i.random=lq,i.round=cq,i.sign=fq,i.sin=mq,i.sinh=dq,i.sqrt=pq,i.sub=vq,i.sum=gq,i.tan=hq,i.tanh=yq,i.trunc=bq,e===void 0&&(e={}),e&&e.defaults!==!0)for(n=["precision","rounding","toExpNeg","toExpPos","maxE","minE","modulo","crypto"],r=0;r<n.length;)e.hasOwnProperty(t=n[r++])||(e[t]=this[t]);return i.config(e),i}function Jb(e,r){return new this(e).div(r)}function Yb(e){return new this(e).exp()}function zb(e){return F(e=new this(e),e.e+1,3)}function xb(){var e,r,t=new this(0);for(P=!1,e=0;e<arguments.length;)if(r=new this(arguments[e++]),r.d)t.d&&(t=t.plus(r.times(r)));else{if(r.s)return P=!0,new this(1/0);t=r}return P=!0,t.sqrt()}function es(e){return e instanceof x||e&&e.toStringTag===is||!1}function eq(e){return new this(e).ln()}function rq(e,r){return new this(e).log(r)}function tq(e){return new this(e).log(2)}function nq(e){return new this(e).log(10)}function iq(){return us(this,arguments,-1)}function oq(){return us(this,arguments,1)}function aq(e,r){return new this(e).mod(r)}function sq(e,r){return new this(e).mul(r)}function uq(e,r){return new this(e).pow(r)}function lq(e){var r,t,n,i,o=0,a=new this(1),s=[];if(e===void 0?e=this.precision:he(e,1,cr),n=Math.ceil(e/R),this.crypto)if(crypto.getRandomValues)for(r=crypto.getRandomValues(new Uint32Array(n));o<n;)i=r[o],i>=429e7?r[o]=crypto.getRandomValues(new Uint32Array(1))[0]:s[o++]=i%1e7;else if(crypto.randomBytes){for(r=crypto.randomBytes(n*=4);o<n;)i=r[o]+(r[o+1]<<8)+(r[o+2]<<16)+((r[o+3]&127)<<24),i>=214e7?crypto.randomBytes(4).copy(r,o):(s.push(i%1e7),o+=4);o=n/4}else throw Error(ns);else for(;o<n;)s[o++]=Math.random()*1e7|0;for(n=s[--o],e%=R,n&&e&&(i=te(10,R-e),s[o]=(n/i|0)*i);s[o]===0;o--)s.pop();if(o<0)t=0,s=[0];else{for(t=-1;s[0]===0;t-=R)s.shift();for(n=1,i=s[0];i>=10;i/=10)n++;n<R&&(t-=R-n)}return a.e=t,a.d=s,a}function cq(e){return F(e=new this(e),e.e+1,this.rounding)}function fq(e){return e=new this(e),e.d?e.d[0]?e.s:0*e.s:e.s||NaN}function mq(e){return new this(e).sin()}function dq(e){return new this(e).sinh()}function pq(e){return new this(e).sqrt()}function vq(e,r){return new this(e).sub(r)}function gq(){var e=0,r=arguments,t=new this(r[e]);for(P=!1;t.s&&++e<r.length;)t=t.plus(r[e]);return P=!0,F(t,this.precision,this.rounding)}function hq(e){return new this(e).tan()}function yq(e){return new this(e).tanh()}function bq(e){return F(e=new this(e),e.e+1,1)}w[Symbol.for("nodejs.util.inspect.custom")]=w.toString;w[Symbol.toStringTag]="Decimal";var x=w.constructor=fs(Zi);qn=new x(qn);wn=new x(wn);var qq=12,En=e=>new x(e).toSignificantDigits(qq).toFixed();function ms(e){return new xi(e)}var xi=class{s0;s1;s2;s3;constructor([r,t,n,i]){[this.s0,this.s1,this.s2,this.s3]=[r|0,t|0,n|0,i|0]}nextUint32(){let r=Math.imul(this.s1,5),t=this.s1<<9;return this.s2^=this.s0,this.s3^=this.s1,this.s1^=this.s2,this.s0^=this.s3,this.s2^=t,this.s3=this.s3<<11|this.s3>>>21,Math.imul(r<<7|r>>>25,9)>>>0}nextUniform(){let r=this.nextUint32()>>>5,t=this.nextUint32()>>>6;return(r*67108864+t+.5)/9007199254740992}};var E=class extends Error{code;constructor(r,t){super(t),this.name="MeasurementError",this.code=r}};function ds(e){let r=/^[0-9a-f]{64}$/i.test(e)?(e.match(/.{8}/g)??[]).map(n=>Number.parseInt(n,16)):[],t=[0,1,2,3].map(n=>((r[n]??0)^(r[n+4]??0))>>>0);if(t.every(n=>n===0))throw new E("random/not-a-digest",`seedFromDigest: found "${e}", expected 64 hexadecimal digits whose halves differ. Give the SHA-256 digest of the inputs.`);return t}var ps=4656612873077393e-25;function e0(e,r){let t,n;do{t=(e.nextUint32()+.5)*ps-1;let o=(e.nextUint32()+.5)*ps-1;n=t*t+o*o}while(n>1);let i=r===1/0?-2*Math.log(n):r*Math.expm1(-2*Math.log(n)/r);return t*Math.sqrt(i/n)}function nt(e,r){if(e.length<2)throw new E("measurement/too-few-readings",`${r}: found ${e.length} means, expected at least 2. Use the one mean itself.`);e.forEach(({mean:t,standardUncertainty:n},i)=>{if(!Number.isFinite(t)||!Number.isFinite(n))throw new E("measurement/not-a-number",`${r}: mean ${i+1} is ${t} with standard uncertainty ${n}, expected finite numbers. Correct that submission.`);if(!(n>0))throw new E("consensus/no-uncertainty",`${r}: standard uncertainty ${i+1} is ${n}, expected above 0. Test more specimens.`)})}function le(e){let r=0,t=0;for(let n of e){let i=r+n;t+=Math.abs(r)>=Math.abs(n)?r-i+n:n-i+r,r=i}return r+t}function fr(e,r){let t=e.map(({standardUncertainty:a})=>1/(a**2+r)),n=le(t),i=le(e.map((a,s)=>t[s]*a.mean))/n,o=le(e.map((a,s)=>t[s]*(a.mean-i)**2));return{mean:i,weights:t,totalWeight:n,spread:o}}var wq=200;function vs(e){nt(e,"mandelPaule");let r=Math.max(...e.map(({mean:s})=>s))-Math.min(...e.map(({mean:s})=>s)),t=fr(e,0).spread<=e.length-1,[n,i]=[0,t?0:r*r*e.length];for(let s=0;s<wq&&i-n>0;s++){let u=(n+i)/2;fr(e,u).spread>e.length-1?n=u:i=u}let{mean:o,totalWeight:a}=fr(e,i);return{mean:o,betweenVariance:i,standardError:1/Math.sqrt(a)}}var ML=et(Vp(),1),K5=et(X5(),1);function Se(e,r){if(!(e>0&&e<1))throw new E("distributions/out-of-domain",`${r}: p is ${e}, expected 0 < p < 1. Give a probability, not a percentage.`)}function yt(e,r){if(!(e>0))throw new E("distributions/out-of-domain",`${r}: degrees of freedom are ${e}, expected a number above 0 or Infinity. Check the number of readings.`)}function Q5(e,r){if(yt(e,r),e===1/0)throw new E("distributions/out-of-domain",`${r}: degrees of freedom are infinite, expected a finite number. Give the number of readings less one.`)}function rn(e,r){if(Number.isNaN(e))throw new E("distributions/out-of-domain",`${r}: x is NaN, expected a number. Check the step before this one.`)}function bt(e,r){return Se(e,"chiSquareQuantile"),Q5(r,"chiSquareQuantile"),(0,K5.default)(e,r)}function qt(e,r,t){if(e.length<r)throw new E("measurement/too-few-readings",`${t}: found ${e.length} readings, expected at least ${r}. Add readings or leave this figure out.`);let n=e.findIndex(i=>!Number.isFinite(i));if(n>=0)throw new E("measurement/not-a-number",`${t}: reading ${n+1} is ${String(e[n])}, expected a finite number. Correct or invalidate that reading.`)}function X(e){qt(e,1,"mean");let r=le(e)/e.length,t=r+le(e.map(n=>n-r))/e.length;if(!Number.isFinite(t))throw new E("measurement/not-a-number","mean: the sum leaves the number range. Check the unit of the readings.");return t}var PL=.99;function Y5(e,r){let n=[...new Set(e.flatMap(i=>i.parties))].sort().map(i=>{let o=e.filter(a=>!a.parties.includes(i));return[i,o.length===0?null:Z5(o,r).value]});return{...Z5(e,r),without:Object.fromEntries(n)}}function Z5(e,r){let[t]=e;if(!t)throw new E("measurement/too-few-readings","evidenceOfSubmissions: found no submissions, expected at least 1. Leave the entry out of the category.");if(e.length===1){let{value:y,standardUncertainty:h,degreesOfFreedom:q,shared:b}=t;return{value:y,standardUncertainty:h,degreesOfFreedom:q,shared:b}}let n=e.map(({value:y,standardUncertainty:h})=>({mean:y,standardUncertainty:h}));nt(n,"evidenceOfSubmissions");let i=X(e.map(y=>y.value)),o=e.map(({standardUncertainty:y,shared:h})=>1/(y**2+J5(i,h,r))),a=o.reduce((y,h)=>y+h,0),s=o.map(y=>y/a),u=e.reduce((y,h,q)=>y+s[q]*h.value,0),l=e.reduce((y,h,q)=>y+o[q]*(h.value-u)**2,0),c=TL(e,s),f=e.map(({standardUncertainty:y},h)=>(s[h]*y)**2),d=f.reduce((y,h)=>y+h,0),v=l<=bt(PL,e.length-1)?d:Math.max(d,vs(n).standardError**2-J5(u,c,r)),g=f.reduce((y,h,q)=>y+h**2/e[q].degreesOfFreedom,0)+(v-d)**2/(e.length-1);return{value:u,standardUncertainty:Math.sqrt(v),degreesOfFreedom:g===0?1/0:v**2/g,shared:c}}var J5=(e,r,t)=>r.reduce((n,{source:i,sensitivity:o})=>n+(e*o*Sr(i,t).relativeStandardUncertainty)**2,0);function TL(e,r){let t=new Map;return e.forEach(({shared:n},i)=>{for(let{source:o,sensitivity:a}of n)t.set(o,(t.get(o)??0)+r[i]*a)}),[...t].map(([n,i])=>({source:n,sensitivity:i}))}function Sr(e,r){let t=Object.hasOwn(r,e)?r[e]:void 0;if(!t)throw new E("ranking/unknown-source",`sourceNamed: found "${e}", expected one of: ${Object.keys(r).join(", ")||"none"}. State what that source may be off by.`);return t}function z5(e,r,t){return new Map(Object.keys(e).sort().map(n=>{let{relativeStandardUncertainty:i,degreesOfFreedom:o}=Sr(n,e),a=new Float64Array(r);for(let s=0;s<r;s++)a[s]=i*e0(t,o);return[n,a]}))}function x5(e,r,t,n){let i=e.length,o=new Float64Array(t*i);return e.forEach(({value:a,standardUncertainty:s,degreesOfFreedom:u,shared:l},c)=>{if(s>0)for(let f=c;f<o.length;f+=i)o[f]=s*e0(n,u);for(let{source:f,sensitivity:d}of l){let p=r.get(f),v=a*d;for(let g=0;g<t;g++)o[g*i+c]=o[g*i+c]+v*p[g]}}),o}function To(e,r){let t=e.length,n=[...new Set(e.flatMap(({shared:a})=>a.map(({source:s})=>s)))],i=new Float64Array(t*n.length);e.forEach(({value:a,shared:s},u)=>{for(let{source:l,sensitivity:c}of s){let f=u*n.length+n.indexOf(l);i[f]=i[f]+a*c*Sr(l,r).relativeStandardUncertainty}});let o=new Float64Array(t*t);for(let a=0;a<t;a++)for(let s=0;s<a;s++){let u=e[a].standardUncertainty**2+e[s].standardUncertainty**2;for(let l=0;l<n.length;l++)u+=(i[a*n.length+l]-i[s*n.length+l])**2;o[a*t+s]=o[s*t+a]=Math.sqrt(u)}return o}var tn=30,ev=40,ii=x.clone({precision:60,rounding:x.ROUND_HALF_EVEN,toExpNeg:-60,toExpPos:80,minE:-9e15,maxE:9e15,defaults:!0});function oi(e,r){if(!(typeof e=="number"?Number.isFinite(e):/^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(e.trim())))throw new E("units/not-a-number",`${r}: found "${String(e).slice(0,40)}", expected a finite number. Check the step before this one.`);return new ii(typeof e=="number"?e:e.trim())}var rv=40;function H(e,r){if(!Number.isInteger(r)||r<0||r>rv)throw new E("units/bad-places",`roundHalfEven: found ${r} places, expected a whole number from 0 to ${rv}.`);let t=oi(e,"roundHalfEven").toDecimalPlaces(r);return(t.isZero()?t.abs():t).toFixed(r)}function ai(e){let r=new Float64Array(e),t=new Uint32Array(r.buffer),n=4095;return{keys:r,writePlaces(i,o){for(let s=0;s<e;s++)r[s]=r[s]+0,t[2*s]=t[2*s]&~n|s;r.sort();let a=0;for(let s=0;s<e;s++)s>0&&t[2*s+1]===t[2*s-1]&&((t[2*s]^t[2*s-2])&~n)===0||(a=s+1),i[o+(t[2*s]&n)]=a}}}function Nr(e,r){let t=e.length,n=new Uint16Array(r.length),i=ai(t);for(let o=0;o<r.length;o+=t){for(let a=0;a<t;a++)i.keys[a]=-(e[a]+r[o+a]);i.writePlaces(n,o)}return n}function tv(e,r){let t=e.length/r;return Array.from({length:r},(n,i)=>{let[o,a]=[0,0];for(let s=i;s<e.length;s+=r)e[s]===1&&(o+=1),e[s]<=5&&(a+=1);return{ofFirst:o/t,ofFirstFive:a/t}})}function nv(e,r,t,n){let i=0;for(let o=0;o<e.length;o+=r){let[a,s]=[e[o+t],e[o+n]];i+=a<s?2:a===s?1:0}return i/2/(e.length/r)}function si(e,r,t,n){let i=new Uint16Array(e.length),o=ai(t);for(let a=0;a<e.length;a+=t){for(let s=0;s<t;s++)o.keys[s]=e[a+s];o.writePlaces(i,a),n==="mostFirsts"&&CL(i,r,t,a)}return i}function CL(e,r,t,n){let i=new Map;for(let o=0;o<t;o++)i.set(e[n+o],[...i.get(e[n+o])??[],o]);for(let[o,a]of i){if(a.length<2)continue;let s=a.map(u=>r.map(l=>l.places[n+u]).sort((l,c)=>l-c));a.forEach((u,l)=>{e[n+u]=o+s.filter(c=>DL(c,s[l])).length})}}function DL(e,r){let t=e.findIndex((n,i)=>n!==r[i]);return t!==-1&&e[t]<r[t]}function Gr(e,r,t){let n=new Float64Array(e[0]?.places.length??0);if(t==="pairwiseWins"){for(let i=0;i<n.length;i+=r)kL(n,e,r,i);return n}for(let{weight:i,places:o,goodness:a}of e)if(t==="meanStandardScore")for(let s=0;s<n.length;s+=r)LL(n,a,i,r,s);else{let s=t==="sumOfPlaces"?1:i;for(let u=0;u<n.length;u++)n[u]=n[u]+s*o[u]}return n}function LL(e,r,t,n,i){let o=0;for(let c=0;c<n;c++)o+=r[i+c];let a=o/n,s=0,u=!0;for(let c=0;c<n;c++)s+=(r[i+c]-a)**2,u&&=r[i+c]===r[i];if(u)return;let l=t/Math.sqrt(s/(n-1));for(let c=0;c<n;c++)e[i+c]=e[i+c]-l*(r[i+c]-a)}function kL(e,r,t,n){for(let i=1;i<t;i++)for(let o=0;o<i;o++){let a=0;for(let{places:u}of r)a+=Math.sign(u[n+o]-u[n+i]);let s=(1+Math.sign(a))/2;e[n+i]=e[n+i]-s,e[n+o]=e[n+o]-(1-s)}}var UL=3,Co=1e6;function nn(e){let{entries:r,combine:t,countPlaces:n,tieBreak:i}=e,o=(l,c)=>!Number.isNaN(c[l]),a=r.flatMap(({isExcluded:l},c)=>!l&&e.categories.every(({goodness:f})=>o(c,f))?[c]:[]),s=e.categories.map(({weight:l,goodness:c})=>{let f=r.flatMap(({isExcluded:g},y)=>(!g||n==="beforeExclusions")&&o(y,c)?[y]:[]),d=Float64Array.from(f,g=>c[g]),p=Nr(d,new Float64Array(d.length)),v=new Map(f.map((g,y)=>[g,p[y]]));return{weight:l,places:Uint16Array.from(a,g=>v.get(g)),goodness:Float64Array.from(a,g=>c[g])}}),u=Gr(s,a.length,t);return{ranked:a,categories:s,scores:u,places:si($L(u,e),s,a.length,i)}}function $L(e,{combine:r,categories:t}){if(r==="sumOfPlaces"||r==="pairwiseWins")return e;let n=t.reduce((o,{weight:a})=>o+a,0),i=r==="weightedSumOfPlaces"?Co:Math.max(1,n);return e.map(o=>Number(H(String(o/i),UL)))}var iv=1e4;function ov(e,r,t,n){let i=e.categories.map(u=>Gr([{...u,weight:1}],r.length,t==="meanStandardScore"?t:"sumOfPlaces")),o=e.categories.map(({weight:u})=>t==="sumOfPlaces"?1:u),a=o.reduce((u,l)=>u+l,0),s=o.map(u=>a===0?1/o.length:u/a);return{firstPlaces:[...BL(i,r.length,n)].map((u,l)=>({id:r[l],share:u})).filter(({share:u})=>u>0).sort((u,l)=>l.share-u.share||(u.id<l.id?-1:1)),smallestChange:HL(i,s,r,e.places)}}function BL(e,r,t){let n=new Float64Array(r),i=new Float64Array(e.length),o=new Float64Array(r);for(let a=0;a<iv;a++){for(let l=0;l<i.length;l++)i[l]=-Math.log(t.nextUniform());o.fill(0),e.forEach((l,c)=>{for(let f=0;f<r;f++)o[f]=o[f]+i[c]*l[f]});let s=1/0;for(let l=0;l<r;l++)o[l]<s&&(s=o[l]);let u=0;for(let l=0;l<r;l++)o[l]===s&&(u+=1);for(let l=0;l<r;l++)o[l]===s&&(n[l]=n[l]+1/u)}return n.map(a=>a/iv)}function HL(e,r,t,n){let i=n.indexOf(1),o=null;return t.forEach((a,s)=>{if(s===i)return;let u=n[s]===1?0:jL(e.map(l=>l[s]-l[i]),r);u!==null&&(o===null||u<o.weightMoved)&&(o={weightMoved:u,id:a})}),o}function jL(e,r){let t=e.reduce((o,a,s)=>o+r[s]*a,0);if(t<=0)return 0;let n=Math.min(...e);if(n>0)return null;let i=0;for(let o of e.map((a,s)=>s).sort((a,s)=>e[s]-e[a])){let a=e[o]-n;if(a<=0)break;if(r[o]*a>=t)return i+t/a;i+=r[o],t-=r[o]*a}return i}var WL=50;function av(e,r,t){let n=nn(e),i=(u,l,c)=>({kind:u,name:l,...GL(e,n,c,nn(c),u==="entry"?l:null)}),a=[...(e.categories.length<2?[]:e.categories).map(({code:u})=>i("category",u,{...e,categories:e.categories.filter(l=>l.code!==u)})),...r.map(u=>i("party",u.name,u.table)),...e.entries.flatMap(({id:u,isExcluded:l},c)=>l?[]:[i("entry",u,VL(e,c))]).filter(({swappedPairs:u})=>u>0)],s=e.combine!=="pairwiseWins"&&n.ranked.length>0&&e.categories.length>0;return{leftOut:a,weights:s?ov(n,n.ranked.map(u=>e.entries[u].id),e.combine,t):null}}function VL(e,r){return{...e,entries:e.entries.filter((t,n)=>n!==r),categories:e.categories.map(t=>({...t,goodness:t.goodness.filter((n,i)=>i!==r)}))}}function GL(e,r,t,n,i){let o=new Map(n.ranked.map((l,c)=>[t.entries[l].id,n.places[c]])),a=r.ranked.flatMap((l,c)=>{let f=e.entries[l].id,d=o.get(f);return d===void 0?[]:[{id:f,before:r.places[c],now:d}]}),s=0,u=[];for(let l of a)for(let c of a)l.before>c.before&&l.now<c.now&&(s+=1,u.length<WL&&u.push([l.id,c.id]));return{first:[...o].flatMap(([l,c])=>c===1?[l]:[]),swappedPairs:s,swaps:u,dropped:r.ranked.map(l=>e.entries[l].id).filter(l=>!o.has(l)&&l!==i)}}function Xr(e,r,t){if(t.length===r&&t.every((a,s)=>a===s))return e;let n=r===0?0:e.length/r,i=e instanceof Float64Array?new Float64Array(n*t.length):new Uint16Array(n*t.length),o=0;for(let a=0;a<n;a++)for(let s of t)i[o++]=e[a*r+s];return i}function oe(e,r,t){if(!(e>0&&e<1/0))throw new E("figures/not-positive",`${t}: ${r} is ${e}, expected a finite number above 0. Correct the reading.`)}function Pe(e,r,t){if(!(e>=0&&e<1/0))throw new E("figures/negative",`${t}: ${r} is ${e}, expected a finite number of 0 or more. Correct the reading.`)}function on(e,r,t){if(!Number.isFinite(e))throw new E("measurement/not-a-number",`${t}: ${r} is ${e}, expected a finite number. Check the step before this one.`)}var XL=.99;function sv(e,r){let t=e.length;if(t<2)return e;let n=0;for(let u of r)n+=u*u;if(n===0)return e;on(n,"uncertainty of the differences","settledValues");let i=X([...e]),o=0;for(let u of e)o+=(u-i)**2;let a=bt(XL,t-1)/(t-1)*(n/(2*t)),s=o===0?0:Math.max(0,1-a/o);return e.map(u=>i+Math.sqrt(s)*(u-i))}function uv(e,r,t,n){let i=e.length/t,o=new Do(Math.max(1,i-Math.ceil(n*(i+1))+1)),a=QL(r,t),s=new Uint16Array(t),u=new Uint16Array(t);for(let l=0;l<i;l++){let c=e.subarray(l*t,(l+1)*t);o.add(KL(o.smallest,c,r,a,s,u))}return o.smallest}function QL(e,r){let t=new Float64Array(r),n=new Float64Array(r);for(let i=0;i<r;i++)for(let o=0;o<r;o++){let a=e[i*r+o];a>t[i]&&(t[i]=a),a>n[o]&&(n[o]=a)}return{asFirst:t,asSecond:n}}function KL(e,r,t,{asFirst:n,asSecond:i},o,a){let s=r.length,[u,l]=[1/0,-1/0];for(let p=0;p<s;p++){let v=r[p];v<u&&(u=v),v>l&&(l=v)}let[c,f]=[0,0];for(let p=0;p<s;p++)(r[p]-u)*n[p]>e&&(o[c++]=p),(l-r[p])*i[p]>e&&(a[f++]=p);let d=e;for(let p=0;p<c;p++){let v=o[p],g=r[v];if(!((g-u)*n[v]<=d))for(let y=0;y<f;y++){let h=a[y],q=(g-r[h])*t[v*s+h];q>d&&(d=q)}}return d}var Do=class{heap;constructor(r){this.heap=new Float64Array(r)}get smallest(){return this.heap[0]}add(r){let{heap:t}=this;if(r<=t[0])return;let n=0;for(;;){let i=2*n+1;if(i>=t.length||(i+1<t.length&&t[i+1]<t[i]&&(i+=1),t[i]>=r))break;t[n]=t[i],n=i}t[n]=r}};function lv(e,r,t,n){let i=e.length,o=new Uint8Array(i*i),a=new Float64Array(i*i),s=0;for(let u=0;u<i;u++)for(let l=0;l<i;l++){let c=t[u*i+l];u!==l&&(c>0?(a[u*i+l]=1/c,s+=1):e[u]>e[l]&&(o[u*i+l]=1))}if(s===0)return{isAhead:o,criticalValue:null};for(;;){let u=uv(r,a,i,n);if(ZL(e,a,o,u)===0)return{isAhead:o,criticalValue:u}}}function ZL(e,r,t,n){let i=e.length,o=0;for(let a=0;a<i;a++)for(let s=0;s<i;s++){let u=r[a*i+s];u===0||(e[a]-e[s])*u<=n||(t[a*i+s]=1,r[a*i+s]=0,o+=1)}return o}function cv(e,r){let t=r.length,n=new Uint16Array(t),i=JL(e,t),o=r.map((a,s)=>s).sort((a,s)=>i[a]-i[s]);for(let a of o){let s=1;for(let u=0;u<t;u++)e[u*t+a]===1&&n[u]>=s&&(s=n[u]+1);n[a]=s}return r.map((a,s)=>{let u=0;for(let l=0;l<t;l++)u+=e[s*t+l];return{low:Math.min(a,1+i[s]),high:t-u,group:n[s]}})}function JL(e,r){let t=new Uint16Array(r);for(let n=0;n<r;n++)for(let i=0;i<r;i++)t[i]=t[i]+e[n*r+i];return t}function ui(e){let{ids:r,published:t,goodness:n,errors:i,places:o,differenceUncertainty:a,level:s}=e,u=r.length,l=[...e.brokenPlaces??Nr(t,new Float64Array(u))],{isAhead:c,criticalValue:f}=lv(n,i,a,s),d=cv(c,l),p=tv(o,u),v=r.map((y,h)=>h).sort((y,h)=>l[y]-l[h]||(r[y]<r[h]?-1:1)),g=v.map((y,h)=>{let q=v[h+1];return{id:r[y],place:l[y],...d[y],chanceOfFirst:p[y].ofFirst,chanceOfFirstFive:p[y].ofFirstFive,chanceAheadOfNext:q===void 0?null:nv(o,u,y,q)}});return{criticalValue:f,rows:g}}function fv(e,r,{sources:t,draws:n,level:i,random:o,rankedIds:a}){let s=r.entries.filter(({isExcluded:b})=>!b||r.countPlaces==="beforeExclusions").flatMap(({id:b,isExcluded:N,results:O})=>O[e.code]?[{id:b,isExcluded:N,evidence:O[e.code]}]:[]),u=s.map(b=>b.evidence),l=s.length,c=e.direction==="more"?1:-1,f=x5(u,t,n,o).map(b=>c*b),d=Float64Array.from(u,({value:b})=>c*b),p=Nr(d,f),v=s.flatMap(({isExcluded:b},N)=>b?[]:[N]),g=ui({ids:v.map(b=>s[b].id),published:Float64Array.from(v,b=>c*ko(e,u[b].value)),goodness:Xr(d,l,v),errors:Xr(f,l,v),places:v.length===l?p:Nr(Xr(d,l,v),Xr(f,l,v)),differenceUncertainty:To(v.map(b=>u[b]),r.sources),level:i}),y=a.map(b=>s.findIndex(N=>N.id===b)),h=sv(d,To(u,r.sources)),q=(b,N)=>({weight:Lo(e),places:Xr(N,l,y),goodness:r.combine==="meanStandardScore"?Xr(YL(b,f),l,y):new Float64Array(0)});return{certainty:g,forOverall:{found:q(d,p),settled:q(h,Nr(h,f))}}}function Lo(e){return Math.round(Number(e.weight)*Co)}function ko(e,r){return Number(H(String(r),e.places))}var YL=(e,r)=>r.map((t,n)=>t+e[n%e.length]);var zL=2e3;function mv(e,r,t,n,i){let o=e.length;if(o===0||t.length===0)return{criticalValue:null,rows:[]};let a=t.map(f=>f.found),s=si(Gr(a,o,n.combine),a,o,n.tieBreak),u=t.map(f=>f.settled),l=xL(Gr(u,o,n.combine),o),c=r.scores.map(f=>-f);return ui({ids:e,published:c,goodness:c,errors:l,places:s,differenceUncertainty:ek(l,o),level:i,brokenPlaces:r.places})}function xL(e,r){let t=e.length/r,n=new Float64Array(e.length);for(let i=0;i<r;i++){let o=0;for(let s=i;s<e.length;s+=r)o+=e[s];let a=o/t;for(let s=i;s<e.length;s+=r)n[s]=a-e[s]}return n}function ek(e,r){let t=Math.min(zL,e.length/r),n=Array.from({length:r},(o,a)=>Float64Array.from({length:t},(s,u)=>e[u*r+a])),i=new Float64Array(r*r);for(let o=0;o<r;o++)for(let a=0;a<o;a++){let[s,u]=[n[o],n[a]],l=0;for(let c=0;c<t;c++)l+=(s[c]-u[c])**2;i[o*r+a]=i[a*r+o]=Math.sqrt(l/t)}return i}var an=1e4;function vv(e){let{entries:r,categories:t,sources:n,draws:i=an,level:o=.95}=e;Se(o,"rankWithUncertainty"),Number.isInteger(i)&&i>=an||wt("ranking/too-few-draws",`found ${i} draws, expected a whole number of at least ${an}. Draw more.`),r.length>4096&&wt("ranking/too-many-entries",`found ${r.length} entries, expected at most ${4096}. Split the edition.`),pv(r.map(({id:s})=>s)),pv(t.map(({code:s})=>s));let a=t.find(({weight:s})=>!/^\d+(\.\d{1,6})?$/.test(s));a&&wt("ranking/bad-weight",`category ${a.code} has weight "${a.weight}", expected a decimal of 0 or more with at most 6 places.`),Object.entries(n).forEach(([s,u])=>rk(s,u));for(let{id:s,results:u}of r)for(let{code:l}of t){let c=u[l];c&&tk(`entry ${s} in category ${l}`,c,n)}}function pv(e){let r=e.find((t,n)=>e.indexOf(t)!==n);r!==void 0&&wt("ranking/not-unique",`"${r}" is there twice, expected once. Merge its results.`)}function rk(e,{relativeStandardUncertainty:r,degreesOfFreedom:t}){r>=0&&r<1/0&&t>0||wt("ranking/bad-evidence",`source ${e} has relative standard uncertainty ${r} with ${t} degrees of freedom, expected 0 or more with more than 0.`)}function tk(e,{value:r,standardUncertainty:t,degreesOfFreedom:n,shared:i,without:o},a){let s=t>=0&&t<1/0&&n>0,u=Number.isFinite(r)&&i.every(({sensitivity:c})=>Number.isFinite(c)),l=Object.values(o).every(c=>c===null||Number.isFinite(c));(!s||!u||!l)&&wt("ranking/bad-evidence",`${e}: found ${r} ± ${t} with ${n} degrees of freedom, expected finite numbers. Moderate the variances or leave the entry out.`);for(let{source:c}of i)Sr(c,a)}function wt(e,r){throw new E(e,`rankWithUncertainty: ${r}`)}function gv(e){vv(e);let{draws:r=an,level:t=.95}=e,n=ms(ds(e.digest)),i=z5(e.sources,r,n),o={...e,entries:[...e.entries].sort((c,f)=>c.id<f.id?-1:1),categories:[...e.categories].sort((c,f)=>c.code<f.code?-1:1)},a=hv(o),s=nn(a),u=s.ranked.map(c=>a.entries[c].id),l=o.categories.map(c=>({code:c.code,...fv(c,o,{sources:i,draws:r,level:t,random:n,rankedIds:u})}));return{draws:r,level:t,categories:Object.fromEntries(l.map(({code:c,certainty:f})=>[c,f])),overall:mv(u,s,l.map(({forOverall:c})=>c),e,t),sensitivity:av(a,nk(o),n)}}function hv({entries:e,categories:r,combine:t,countPlaces:n,tieBreak:i},o=({value:a})=>a){let a=s=>Float64Array.from(e,({results:u})=>{let l=u[s.code],c=l?o(l):null;return c===null?NaN:(s.direction==="more"?1:-1)*ko(s,c)});return{combine:t,countPlaces:n,tieBreak:i,entries:e.map(({id:s,isExcluded:u})=>({id:s,isExcluded:u})),categories:r.map(s=>({code:s.code,weight:Lo(s),goodness:a(s)}))}}function nk(e){return[...new Set(e.entries.flatMap(({results:t})=>Object.values(t).flatMap(n=>Object.keys(n?.without??{}))))].sort().map(t=>({name:t,table:hv(e,({value:n,without:i})=>{let o=i[t];return o===void 0?n:o})}))}var ik=["specimens","testers","rigs"];function St({code:e,quantity:r,minimum:t},n,i){let o=i.get(n)?.get(r);return ik.map(a=>({category:e,what:a,has:o?.[a]??0,needs:t[a]})).filter(({has:a,needs:s})=>a<s)}var ok={specimens:["specimen","specimens"],testers:["tester","testers"],rigs:["rig","rigs"]},ak=["no","one","two","three","four","five","six","seven","eight","nine","ten"];function yv({category:e,what:r,has:t,needs:n}){let i=n-t,[o,a]=ok[r];return`${ak[i]??String(i)} ${t===0?"":"more "}${i===1?o:a} in ${e}`}var sk={categories:new Map,overall:new Map,sensitivity:null};function bv({edition:e,results:r,sources:t},n){let{categories:i,combine:o,countPlaces:a,tieBreak:s}=e.scheme.rules,u=e.entries.map(({variant:p,exclusion:v})=>({id:p,isExcluded:v!==null,found:i.map(g=>{let y=St(g,p,r).length===0;return[g.code,y?r.get(p)?.get(g.quantity)??null:null]})}));if(u.some(({found:p})=>p.some(([,v])=>v&&!v.evidence)))return sk;let{categories:l,overall:c,sensitivity:f}=gv({digest:n,categories:i,combine:o,countPlaces:a,tieBreak:s,sources:t,entries:u.map(({found:p,...v})=>({...v,results:Object.fromEntries(p.map(([g,y])=>[g,y?.evidence??null]))}))}),d=({rows:p})=>new Map(p.map(v=>[v.id,v]));return{categories:new Map(Object.entries(l).map(([p,v])=>[p,d(v)])),overall:d(c),sensitivity:f}}function Uo(e,r){let n=e.map(uk).map((o,a)=>({value:o,i:a})).sort((o,a)=>r==="more"?a.value.cmp(o.value):o.value.cmp(a.value)),i=new Array(e.length).fill(0);return n.forEach(({value:o,i:a},s)=>{let u=n[s-1];i[a]=u?.value.eq(o)?i[u.i]??s:s+1}),i}function uk(e){if(!/^-?\d+(\.\d+)?$/.test(e))throw new E("ranking/not-a-number",`competitionPlaces: found "${e}", expected a decimal such as 820.3. Rank published values only.`);return new x(e)}var lk={sumOfPlaces:0,weightedSumOfPlaces:3,meanStandardScore:3,pairwiseWins:1},qv=e=>e==="meanStandardScore"||e==="pairwiseWins"?"more":"less";function wv(e,r){let t=e[0]?.places.length??0;return{sumOfPlaces:ck,weightedSumOfPlaces:fk,meanStandardScore:mk,pairwiseWins:dk}[r](e,t).map(i=>H(i,lk[r]))}var ck=(e,r)=>Array.from({length:r},(t,n)=>String(e.reduce((i,{places:o})=>i+(o[n]??0),0))),fk=(e,r)=>Array.from({length:r},(t,n)=>e.reduce((i,{places:o,weight:a})=>i.plus(new x(a).times(o[n]??0)),new x(0)).toFixed());function mk(e,r){let t=e.reduce((i,{weight:o})=>i.plus(o),new x(0)),n=e.map(({values:i,direction:o,weight:a})=>{let s=i.map(f=>new x(f)),u=s.reduce((f,d)=>f.plus(d),new x(0)).div(Math.max(1,r)),l=s.reduce((f,d)=>f.plus(d.minus(u).pow(2)),new x(0)).div(Math.max(1,r-1)),c=l.isZero()?new x(0):new x(a).div(l.sqrt()).times(o==="more"?1:-1);return s.map(f=>f.minus(u).times(c))});return Array.from({length:r},(i,o)=>n.reduce((a,s)=>a.plus(s[o]??0),new x(0)).div(t.isZero()?1:t).toFixed())}function dk(e,r){let t=(n,i)=>e.reduce((o,{places:a})=>o+Math.sign((a[i]??0)-(a[n]??0)),0);return Array.from({length:r},(n,i)=>{let o=0;for(let a=0;a<r;a++)a!==i&&(o+=(1+Math.sign(t(i,a)))/2);return String(o)})}function Nv(e){let r=e.categories.map(({code:a})=>a),t=a=>r.filter(s=>(a.values[s]??null)===null),n=e.entries.filter(({exclusion:a})=>a===null),i=n.filter(a=>t(a).length===0),o=e.entries.filter(a=>a.exclusion?.effect==="shownUnplaced");return{categories:Object.fromEntries(e.categories.map(a=>[a.code,pk(a,n,o)])),overall:Ov([...Sv(e,i).map(a=>({...a,placeIfIncluded:null})),...o.filter(a=>t(a).length===0).flatMap(a=>{let s=Sv(e,[...i,a]).find(({id:u})=>u===a.id);return s?[{...s,place:null,placeIfIncluded:s.place}]:[]})]),incomplete:n.filter(a=>t(a).length>0).map(a=>({id:a.id,missing:t(a)})),excluded:e.entries.filter(({exclusion:a})=>a!==null).map(({id:a})=>a)}}var $o=(e,r)=>r.flatMap(({id:t,values:n})=>{let i=n[e]??null;return i===null?[]:[{id:t,value:i}]});function Bo({code:e,direction:r},t){let n=$o(e,t),i=Uo(n.map(({value:o})=>o),r);return new Map(n.map(({id:o},a)=>[o,i[a]??0]))}function pk(e,r,t){let n=Bo(e,r),i=$o(e.code,r).map(({id:a,value:s})=>({id:a,value:s,place:n.get(a)??null,placeIfIncluded:null})),o=t.flatMap(a=>$o(e.code,[a]).map(({id:s,value:u})=>({id:s,value:u,place:null,placeIfIncluded:Bo(e,[...r,a]).get(s)??null})));return Ov([...i,...o])}function Sv(e,r){let t=e.countPlaces==="beforeExclusions"?e.entries:[...e.entries.filter(({exclusion:s})=>s===null),...r.filter(({exclusion:s})=>s!==null)],n=e.categories.map(s=>{let u=Bo(s,t);return{...s,places:r.map(({id:l})=>u.get(l)??0),values:r.map(({values:l})=>l[s.code]??"0")}}),i=wv(n,e.combine),o=Uo(i,qv(e.combine)),a=e.tieBreak==="none"?o:vk(o,n.map(s=>s.places));return r.map(({id:s},u)=>({id:s,score:i[u]??"0",place:a[u]??0,categoryPlaces:Object.fromEntries(n.map(l=>[l.code,l.places[u]??0]))}))}function vk(e,r){let t=Math.max(0,...r.flat()),n=e.map((o,a)=>Array.from({length:t},(s,u)=>r.filter(l=>l[a]===u+1).length)),i=(o,a)=>{let s=o.findIndex((u,l)=>u!==a[l]);return s!==-1&&(o[s]??0)>(a[s]??0)};return e.map((o,a)=>o+e.filter((s,u)=>s===o&&i(n[u]??[],n[a]??[])).length)}function Ov(e){let r=t=>t.place??t.placeIfIncluded??1/0;return e.sort((t,n)=>r(t)-r(n)||(t.id<n.id?-1:1))}var V=(e,r,t="1",n="0")=>({dimension:e,factor:r,divisor:t,offset:n}),ir={N:V("force","1"),kN:V("force","1000"),lbf:V("force","4.4482216152605"),kgf:V("force","9.80665"),gf:V("force","0.00980665"),ozf:V("force","4.4482216152605","16"),mm:V("length","0.001"),µm:V("length","0.000001"),in:V("length","0.0254"),m:V("length","1"),yd:V("length","0.9144"),g:V("mass","0.001"),mg:V("mass","0.000001"),gr:V("mass","0.00006479891"),tex:V("linearDensity","0.000001"),dtex:V("linearDensity","0.0000001"),den:V("linearDensity","0.000001","9"),MPa:V("stress","1000000"),GPa:V("stress","1000000000"),psi:V("stress","4.4482216152605","0.00064516"),ksi:V("stress","4448.2216152605","0.00064516"),"%":V("ratio","0.01"),s:V("time","1"),"°C":V("temperature","1"),"°F":V("temperature","5","9","-32")},Av={force:"N",length:"m",mass:"kg",linearDensity:"kg/m",stress:"Pa",ratio:"1",time:"s",temperature:"degC"};var gk={μm:"µm","℃":"°C","℉":"°F"};function li(e){let r=e.trim(),t=gk[r]??r;if(Object.hasOwn(ir,t))return t;throw new E("units/unknown-symbol",`findUnit: found the unit "${r.slice(0,40)}", expected one of ${Object.keys(ir).join(", ")}. Write the unit as one of these.`)}var hk=/^[+-]?\d+(\.\d+)?([eE][+-]?\d{1,2})?$/;function Ev(e,r){let t=li(r),n=e.trim();if(!hk.test(n))throw new E("units/not-a-number",`parseQuantity: found "${n.slice(0,40)}", expected a number such as 20 or 19.85. Use a point and no thousands separator.`);let i=n.replace(/[eE].*$/,"").replace(/[^\d]/g,"").length;if(i>tn)throw new E("units/too-many-digits",`parseQuantity: found ${i} digits, expected at most ${tn}. Enter the digits that the instrument shows.`);let{dimension:o,factor:a,divisor:s,offset:u}=ir[t],l=new ii(n).plus(u).times(a),c=s==="1"?l:l.div(s).toSignificantDigits(ev);return{text:n,unit:t,si:c.isZero()?"0":c.toString(),siUnit:Av[o],dimension:o}}function Ho(e){return ci(e,"diameterMm"),X(e.map(({wideMm:r,narrowMm:t})=>(r+t)/2))}function Iv(e){return ci(e,"outOfRoundnessPercent"),X(e.map(({wideMm:r,narrowMm:t})=>100*(r-t)/((r+t)/2)))}function ci(e,r){e.forEach(({wideMm:t,narrowMm:n},i)=>{if(oe(t,`wideMm of station ${i+1}`,r),oe(n,`narrowMm of station ${i+1}`,r),t<n)throw new E("figures/wide-below-narrow",`${r}: station ${i+1} has a widest reading of ${t} mm below its narrowest of ${n} mm. Swap or repeat the readings.`)})}function _v(e){return oe(e,"diameterMm","circleAreaMm2"),Math.PI*e*e/4}function Fv(e){return ci(e,"ellipseAreaMm2"),Math.PI/4*X(e.map(({wideMm:r,narrowMm:t})=>r*t))}function Rv(e,r){return oe(e,"linearDensityTex","solidAreaMm2"),oe(r,"densityGPerCm3","solidAreaMm2"),e/(1e3*r)}var Lh=et(J8(),1),kh=et(ih(),1);var Ch=et(fh(),1),Dh=et(Th(),1);function Zr(e){return rn(e,"normalCdf"),(0,Ch.default)(e,0,1)}function Aa(e){return Se(e,"normalQuantile"),(0,Dh.default)(e,0,1)}function Uh(e,r){return rn(e,"tCdf"),yt(r,"tCdf"),r===1/0?Zr(e):(0,Lh.default)(e,r)}function ar(e,r){return Se(e,"tQuantile"),yt(r,"tQuantile"),r===1/0?Aa(e):(0,kh.default)(e,r)}function Fr(e){qt(e,2,"standardDeviation");let r=X(e),t=e.map(o=>o-r),n=le(t),i=le(t.map(o=>o*o));return Math.sqrt(Math.max(0,i-n*n/e.length)/(e.length-1))}function Ea(e,r){if(Gj(e))return{mean:X(e),sd:Fr(e),n:e.length};if(!(e.n>=2&&Number.isInteger(e.n)))throw new E("measurement/too-few-readings",`${r}: n is ${e.n}, expected a whole number of at least 2. Add readings.`);if(!Number.isFinite(e.mean)||!(e.sd>=0&&e.sd<1/0))throw new E("measurement/not-a-number",`${r}: mean ${e.mean}, sd ${e.sd}, expected finite numbers. Check the readings.`);return e}function Gj(e){return Array.isArray(e)}function $h(e,r,t,n){let[i,o]=[Ea(e,"numerator"),Ea(r,"denominator")],a=i.mean/o.mean;if(!Number.isFinite(a))throw new E("figures/zero-denominator",`ratioInputs: the mean of the denominator is ${o.mean}, expected a value that can be divided by. Leave the ratio out.`);let s=i.n+o.n-2,u=((i.n-1)*i.sd**2+(o.n-1)*o.sd**2)/s,l=(t==="pooled"?u:i.sd**2)/i.n,c=(t==="pooled"?u:o.sd**2)/o.n,f=(n??a)**2*c,p=t==="pooled"||l+f===0?s:(l+f)**2/(l**2/(i.n-1)+f**2/(o.n-1));return{a:i.mean,b:o.mean,varianceA:l,varianceB:c,ratio:a,degreesOfFreedom:p}}function Bh(e,r,t={}){let{a:n,b:i,varianceA:o,varianceB:a,degreesOfFreedom:s,ratio:u}=$h(e,r,t.variance??"separate"),l=ar((1+(t.level??.95))/2,s),[c,f]=[l*l*o,l*l*a],d={ratio:u,degreesOfFreedom:s,g:f/(i*i)},p=i*i-f,v=c*p+f*n*n;if(p===0||v<0)return{...d,kind:"whole-line"};let g=Math.sqrt(v),y=[(n*i-g)/p,(n*i+g)/p],[h,q]=[Math.min(...y),Math.max(...y)];if(!Number.isFinite(h)||!Number.isFinite(q))throw new E("measurement/not-a-number","fiellerInterval: the squares of the readings leave the number range. Give the readings in a larger unit.");return p>0?{...d,kind:"bounded",low:h,high:q}:{...d,kind:"exclusive",upTo:h,from:q}}function Xj(e){return e.kind!=="bounded"?"not-bounded":e.high<1?"below":e.low>1?"above":"holds-100"}function Hh(e,r,t=.95){let n=Bh(e,r,{level:t});return e.forEach(i=>Pe(i,"treatedN","retentionFigures")),r.forEach(i=>oe(i,"straightN","retentionFigures")),{retentionPercent:100*n.ratio,interval:n,againstWhole:Xj(n)}}function jh(e,r){return oe(e,"massG","linearDensityTex"),oe(r,"lengthM","linearDensityTex"),1e3*e/r}function Wh(e,r=.95){let t=Fr(e)/Math.sqrt(e.length),n=ar((1+r)/2,e.length-1)*t,i=X(e);return{low:i-n,high:i+n,halfWidth:n}}function Fi(e){qt(e,1,"median");let r=[...e].sort((i,o)=>i-o),t=r[Math.floor(r.length/2)],n=r[Math.floor((r.length-1)/2)];return n+(t-n)/2}function Vh(e){let r=X(e),t=e.length>1?Fr(e):null,n=e.reduce((a,s)=>Math.min(a,s)),i=e.reduce((a,s)=>Math.max(a,s)),o=t!==null&&r>0?100*t/r:null;return{n:e.length,mean:r,sd:t,cvPercent:o,min:n,max:i,range:i-n,median:Fi(e)}}function Gh(e,r,t="untreated"){return e.filter(n=>n.state==="valid"&&n.condition===t).flatMap(n=>n.readings.filter(i=>i.role===r).map(i=>Number(i.valueSi)))}function Xh(e,r,t){let n=Gh(e,"breakingForce"),i=Gh(e,"breakingForce","treated"),o=e.filter(({state:l})=>l==="valid"),a=o.map(Qj).filter(l=>l.length>0),s=gn(o.flatMap(Kj)),u=e.filter(({reason:l})=>l==="brokeAtGrip").length;return{validSpecimens:o.length,invalidSpecimens:e.filter(({state:l})=>l==="invalid").length,gripBreakSharePercent:100*u/Math.max(1,e.length),breakingForceN:gn(n),treatedForceN:gn(i),retentionPercent:Zj(i,n),diameterMm:gn(a.map(Ho)),outOfRoundnessPercent:gn(a.map(Iv)),areaMm2:Jj(r,a.flat(),s?.mean??null,t),linearDensityTex:s}}function gn(e){if(e.length===0)return null;let{n:r,mean:t,sd:n,cvPercent:i,min:o,max:a,median:s}=Vh(e),u=r>1?Wh(e):null;return{n:r,mean:t,sd:n,cvPercent:i,min:o,max:a,median:s,low95:u?.low??null,high95:u?.high??null}}function Qj({readings:e}){let r=i=>new Map(e.filter(o=>o.role===i).map(o=>[o.station,1e3*Number(o.valueSi)])),[t,n]=[r("wideDiameter"),r("narrowDiameter")];return[...t].flatMap(([i,o])=>{let a=n.get(i);return a===void 0?[]:[{wideMm:o,narrowMm:a}]})}function Kj({readings:e}){let r=i=>e.find(o=>o.role===i)?.valueSi,[t,n]=[r("mass"),r("length")];return t===void 0||n===void 0?[]:[jh(1e3*Number(t),Number(n))]}function Zj(e,r){if(e.length<2||r.length<2)return null;let{retentionPercent:t,interval:n}=Hh(e,r),i=n.kind==="bounded";return{value:t,low95:i?100*n.low:null,high95:i?100*n.high:null}}function Jj(e,r,t,n){return e==="solid"?t===null?null:Rv(t,n):e===null||r.length===0?null:e==="circle"?_v(Ho(r)):Fv(r)}var Ri=({specimens:e,areaFrom:r,densityGPerCm3:t})=>Xh(e,r,Number(t));function Ia(e,r=1){let t=[r,...e.map(({evidence:c})=>c.value)].find(c=>!(c>0&&c<1/0));if(t!==void 0)throw new E("ranking/bad-evidence",`productOfEvidence: found ${t}, expected factors and constant above 0. Leave the entry out of the category.`);e.forEach(({power:c})=>on(c,"power","productOfEvidence"));let n=c=>e.reduce((f,{evidence:d,power:p})=>f*c(d)**p,r),i=n(c=>c.value),o=e.map(({evidence:c,power:f})=>(f*c.standardUncertainty/c.value)**2),a=o.reduce((c,f)=>c+f,0),s=o.reduce((c,f,d)=>c+f**2/e[d].evidence.degreesOfFreedom,0),u=[...new Set(e.flatMap(({evidence:c})=>Object.keys(c.without)))].sort(),l=(c,f)=>{let d=c.without[f];return d===void 0?c.value:d};return{value:i,standardUncertainty:i*Math.sqrt(a),degreesOfFreedom:s===0?1/0:a**2/s,shared:e.flatMap(({evidence:c,power:f})=>c.shared.map(({source:d,sensitivity:p})=>({source:d,sensitivity:f*p}))),without:Object.fromEntries(u.map(c=>[c,e.some(({evidence:f})=>l(f,c)===null)?null:n(f=>l(f,c))]))}}function Qh(e){Yj(e);let r=e.map(({sensitivity:a,standardUncertainty:s})=>Math.abs(a)*s),t=le(r.map(a=>a**2)),n=Math.sqrt(t),i=a=>t>0?r[a]**2/t:0,o=le(e.map(({degreesOfFreedom:a},s)=>i(s)**2/a));return{combined:n,effectiveDegreesOfFreedom:o>0?1/o:1/0,expanded:a=>a*n,shares:e.map(({name:a,kind:s},u)=>({name:a,kind:s,contribution:r[u],sharePercent:100*i(u)}))}}function Yj(e){if(e.length===0)throw new E("uncertainty/no-components","combineBudget: found no component, expected at least 1. List what the result depends on.");for(let{name:r,standardUncertainty:t,sensitivity:n,degreesOfFreedom:i}of e)if(Pe(t,`standardUncertainty of ${r}`,"combineBudget"),yt(i,`combineBudget, ${r}`),!Number.isFinite(n))throw new E("measurement/not-a-number",`combineBudget: the sensitivity of ${r} is ${n}, expected a finite number.`)}var Kh=e=>({value:e,standardUncertainty:null,degreesOfFreedom:0,budget:[]});function Zh(e,r){let{value:t,standardUncertainty:n,degreesOfFreedom:i,shared:o}=e,{combined:a,effectiveDegreesOfFreedom:s,shares:u}=Qh([{name:"repeatability",kind:"A",standardUncertainty:n,sensitivity:1,degreesOfFreedom:i},...o.map(({source:l,sensitivity:c})=>{let{relativeStandardUncertainty:f,degreesOfFreedom:d}=Sr(l,r),p=l.startsWith("certificate:")?"B":"A";return{name:l,kind:p,standardUncertainty:f,sensitivity:t*c,degreesOfFreedom:d}})]);return{value:t,standardUncertainty:a,degreesOfFreedom:s,budget:u}}function Jh({value:e,standardUncertainty:r,degreesOfFreedom:t}){if(r===null)return null;let n=r*ar(.975,Math.min(1e6,Math.max(1,t)));return{low:e-n,high:e+n}}var zj=.999,xj=.25;function Yh(e){let r=e.map(eW),t=r;for(;;){let n=rW(t);if(!n||r.length-t.length+1>xj*r.length)break;t=t.filter(i=>i!==n)}return{relativeVariance:zh(t),degreesOfFreedom:t.reduce((n,{relative:i})=>n+i.length-1,0),leftOut:r.filter(n=>!t.includes(n)).map(({position:n})=>n)}}function eW(e,r){nt(e,"pooledBetweenVariance");let{mean:t}=fr(e,0);if(!(t>0))throw new E("consensus/not-positive",`pooledBetweenVariance: a consensus is ${t}, expected above 0. Relative effects need quantities above 0.`);let n=e.map(({mean:u,standardUncertainty:l})=>({mean:u/t,standardUncertainty:l/t})),{weights:i,totalWeight:o,spread:a}=fr(n,0),s=le(i.map(u=>u*u));return{position:r,relative:n,excess:a-(e.length-1),scale:o-s/o}}function zh(e){return e.length===0?0:Math.max(0,le(e.map(({excess:r})=>r))/le(e.map(({scale:r})=>r)))}function rW(e){if(e.length<2)return null;let r=e.map(n=>{let i=zh(e.filter(o=>o!==n));return fr(n.relative,i).spread/bt(zj,n.relative.length-1)}),t=Math.max(...r);return t>1?e[r.indexOf(t)]??null:null}var Jr={breakingForce:["straightPull"],diameter:["diameter"],outOfRoundness:["outOfRoundness"],linearDensity:["linearDensity"],knotRetention:["beforeKnot","knotted"],abrasionRetention:["beforeAbrasion","abraded"]},_a=e=>Jr[e].length===2,tW=["breakingForce","diameter"];function ey(e,r){let t=nW(e,r),n=Map.groupBy(t,({submission:f})=>f.variant),i=[...n.values()].filter(f=>f.length>1).map(f=>f.flatMap(xh)),{relativeVariance:o,degreesOfFreedom:a}=Yh(i.filter(f=>f.length>1).map(f=>f.map(({value:d,standardUncertainty:p})=>({mean:d,standardUncertainty:p})))),s=_a(e)?o:o/2,u={relativeStandardUncertainty:Math.sqrt(s),degreesOfFreedom:a||1/0},l=oW(e,t,u),c=f=>{let d=f.flatMap(xh);return d.length<f.length?null:Y5(d.map(p=>aW(e,p)),l)};return{between:{relativePercent:100*Math.sqrt(o),degreesOfFreedom:a},sources:l,variants:new Map([...n].map(([f,d])=>[f,{points:d,evidence:c(d)}]))}}var xh=e=>e.standardUncertainty===null?[]:[{...e,standardUncertainty:e.standardUncertainty}];function nW(e,r){let[t,n]=Jr[e];return[...r[t].means.values()].flatMap(({submission:i,mean:o,relative:a})=>{if(n===void 0)return{submission:i,value:o,standardUncertainty:a&&o*Math.sqrt(a.variance),degreesOfFreedom:a?.degreesOfFreedom??0};let s=r[n].means.get(i.reference);return s?iW(i,[o,a],[s.mean,s.relative]):[]})}function iW(e,[r,t],[n,i]){let o=100*n/r;if(!t||!i)return{submission:e,value:o,standardUncertainty:null,degreesOfFreedom:0};let a=t.variance+i.variance,s=t.variance**2/t.degreesOfFreedom+i.variance**2/i.degreesOfFreedom;return{submission:e,value:o,standardUncertainty:o*Math.sqrt(a),degreesOfFreedom:s===0?1/0:a**2/s}}var ry=(e,{rig:r})=>`rig:${r}/${e}`,ty=(e,{tester:r})=>`tester:${r}/${e}`;function oW(e,r,t){return Object.fromEntries(r.flatMap(({submission:n})=>[[ty(e,n),t],..._a(e)?[]:[[ry(e,n),t]],...ny(e,n).map(({certificate:i,relative:o})=>[`certificate:${i}`,{relativeStandardUncertainty:o,degreesOfFreedom:1/0}])]))}var ny=(e,{calibration:r})=>r&&tW.includes(e)?[r]:[];function aW(e,{submission:r,value:t,standardUncertainty:n,degreesOfFreedom:i}){let o=[ty(e,r),..._a(e)?[]:[ry(e,r)],...ny(e,r).map(({certificate:a})=>`certificate:${a}`)];return{value:t,standardUncertainty:n,degreesOfFreedom:i,shared:o.map(a=>({source:a,sensitivity:1})),parties:[`tester:${r.tester}`,`rig:${r.rig}`]}}var iy=10;function Mi(e){if(Fa(e,"digamma"),e<iy)return Mi(e+1)-1/e;let r=1/(e*e);return Math.log(e)-.5/e-r*(1/12-r*(1/120-r*(1/252-r*(1/240-r*(1/132-r*691/32760)))))}function It(e){if(Fa(e,"trigamma"),e<iy)return It(e+1)+1/(e*e);let r=1/(e*e);return 1/e+r/2+r/e*(1/6-r*(1/30-r*(1/42-r*(1/30-r*(5/66-r*691/2730)))))}function oy(e){if(Fa(e,"inverseTrigamma"),e>1e7)return 1/Math.sqrt(e);if(e<1e-6)return 1/e;let r=.5+1/e;for(let t=0;t<50;t++){let n=It(r),i=(It(r*1.0001)-It(r*.9999))/(2e-4*r),o=n*(1-n/e)/i;if(r+=o,Math.abs(o)<=1e-14*r)break}return r}function Fa(e,r){if(!(e>0&&e<1/0))throw new E("distributions/out-of-domain",`${r}: the argument is ${e}, expected a finite number above 0. Check the step before this one.`)}var sW=3,uW=1e-5;function ay(e){e.forEach(fW);let r=e.filter(({degreesOfFreedom:n})=>n>0),t=r.length<sW?null:cW(r);return t?{priorVariance:t.variance,priorDegreesOfFreedom:t.degreesOfFreedom,moderated:e.map(n=>lW(n,t))}:{priorVariance:null,priorDegreesOfFreedom:0,moderated:e.map(n=>n.degreesOfFreedom>0?{...n}:null)}}function lW({variance:e,degreesOfFreedom:r},t){if(t.degreesOfFreedom===1/0)return{variance:t.variance,degreesOfFreedom:1/0};let n=t.degreesOfFreedom+r;return{variance:(t.degreesOfFreedom*t.variance+r*e)/n,degreesOfFreedom:n}}function cW(e){let r=Fi(e.map(({variance:s})=>s)),t=uW*(r>0?r:Math.max(...e.map(({variance:s})=>s)));if(t===0)return{variance:0,degreesOfFreedom:1/0};let n=e.map(({degreesOfFreedom:s})=>s/2),i=e.map(({variance:s},u)=>Math.log(Math.max(s,t))-Mi(n[u])+Math.log(n[u])),o=Fr(i)**2-X(n.map(It));if(o<=0)return{variance:Math.exp(X(i)),degreesOfFreedom:1/0};let a=oy(o);return{variance:Math.exp(X(i)+Mi(a)-Math.log(a)),degreesOfFreedom:2*a}}function fW({variance:e,degreesOfFreedom:r},t){if(!(e>=0&&e<1/0&&r>=0&&r<1/0))throw new E("consensus/bad-variance",`moderatedVariances: variance ${t+1} is ${e} with ${r} degrees of freedom, expected both finite and 0 or more. Correct that entry.`)}var mW={straightPull:({method:e,figures:r})=>e==="straight-pull"?r.breakingForceN:null,beforeKnot:({method:e,figures:r})=>e==="named-knot"?r.breakingForceN:null,knotted:({method:e,figures:r})=>e==="named-knot"?r.treatedForceN:null,beforeAbrasion:({method:e,figures:r})=>e==="abrasion"?r.breakingForceN:null,abraded:({method:e,figures:r})=>e==="abrasion"?r.treatedForceN:null,diameter:({figures:e})=>e.diameterMm,outOfRoundness:({figures:e})=>e.outOfRoundnessPercent,linearDensity:({figures:e})=>e.linearDensityTex},dW=["straightPull","beforeKnot","knotted","beforeAbrasion","abraded","diameter"];function sy(e,r){let t=r.flatMap(a=>{let s=mW[e](a);return s&&s.mean>0?[{submission:a,spread:s}]:[]}),{priorVariance:n,moderated:i}=ay(t.map(({spread:{n:a,mean:s,sd:u}})=>({variance:u===null?0:(u/s)**2,degreesOfFreedom:a-1}))),o=t.map(({submission:a,spread:{n:s,mean:u,cvPercent:l}},c)=>{let f=dW.includes(e)&&a.resolution!==null?a.resolution/u:0;return[a.reference,{submission:a,n:s,mean:u,ownCvPercent:l,relative:pW(i[c]??null,s,f)}]});return{typicalCvPercent:n===null?null:100*Math.sqrt(n),means:new Map(o)}}function pW(e,r,t){let n=Math.max(e?.variance??0,t**2/12)/r;return e&&n>0?{variance:n,degreesOfFreedom:e.degreesOfFreedom}:null}var Ra=["breakingForce","diameter","outOfRoundness","linearDensity"],Ma=["knotRetention","abrasionRetention"],vW="Above 100 %: reported as found; straight and treated pulls scatter.";function uy(e,r,t){let n=Object.fromEntries([...new Set(Object.values(Jr).flat())].map(u=>[u,sy(u,r)])),i=Object.fromEntries([...Ra,...Ma].map(u=>[u,ey(u,n)])),o=Object.assign({},...Object.values(i).map(u=>u.sources)),a=(u,l)=>{let c=i[u].variants.get(l);return c?{value:c.evidence?.value??X(c.points.map(d=>d.value)),evidence:c.evidence,from:c.points.map(({submission:d})=>d)}:null},s=u=>{let l=a("breakingForce",u),c=[...Ra.map(f=>[f,a(f,u)]),["apparentStress",gW(l,a("diameter",u))],...Ma.map(f=>[f,a(f,u)]),["strengthHonesty",hW(l,t.get(u))]];return new Map(c.flatMap(([f,d])=>d?[[f,bW(f,d,n,o)]]:[]))};return{results:new Map(e.map(u=>[u,s(u)])),sources:o,spreads:Object.fromEntries([...Ra,...Ma].map(u=>[u,{typicalCvPercent:n[Jr[u].at(-1)??"straightPull"].typicalCvPercent,between:i[u].between}]))}}function gW(e,r){let t=[...e?.from??[],...r?.from??[]].flatMap(({figures:a})=>a.areaMm2??[]);if(!e||!r||t.length===0)return null;let n=X(t)/r.value**2,i=e.value/(n*r.value**2);if(!e.evidence||!r.evidence)return{value:i,evidence:null,from:e.from};let o=[{evidence:e.evidence,power:1},{evidence:r.evidence,power:-2}];return{value:i,evidence:Ia(o,1/n),from:e.from}}function hW(e,r){if(!e||r===void 0)return null;let t=e.evidence&&Ia([{evidence:e.evidence,power:1}],100/r);return{value:100*e.value/r,evidence:t,from:e.from}}var yW=e=>e==="apparentStress"||e==="strengthHonesty"?Jr.breakingForce:Jr[e];function bW(e,{value:r,evidence:t,from:n},i,o){let a=t?Zh(t,o):Kh(r),s=yW(e).map(l=>i[l].means),u=e==="knotRetention"||e==="abrasionRetention";return{quantity:e,estimate:a,evidence:t,ownCvPercents:n.map(({reference:l})=>s.at(-1)?.get(l)?.ownCvPercent??null),specimens:n.reduce((l,{reference:c})=>l+s.reduce((f,d)=>f+(d.get(c)?.n??0),0),0),submissions:n.length,testers:new Set(n.map(({tester:l})=>l)).size,rigs:new Set(n.map(({rig:l})=>l)).size,note:u&&r>100?vW:null}}var qW=["loadFrame","forceGauge","opticalGauge","micrometer","balance"];function Pa({instruments:e}){return(qW.flatMap(t=>e.filter(n=>n.kind===t))[0]??e[0])?.code??"none"}function ly(e){let{edition:r,submissions:t,claims:n,instruments:i}=e,o=new Map(n.filter(({quantity:s})=>s==="breakingForce").map(({variant:s,valueSi:u})=>[s,Number(u)])),a=uy(r.entries.map(({variant:s})=>s),t.map(s=>wW(s,i)),o);return{...e,...a,standings:OW(r,a.results)}}function wW(e,r){let{reference:t,variant:n,method:i,tester:o}=e,a=Pa(e),s=r.find(({code:u})=>u===a);return{reference:t,variant:n,method:i.slug,tester:o,rig:a,figures:Ri(e),calibration:SW(e,s),resolution:s?NW(s):null}}function SW(e,r){let t=e.instruments.find(({code:s})=>s===r?.code)?.certificate,n=r?.calibrations.find(({certificate:s})=>s===t);if(!n)return null;let{certificate:i,expandedUncertaintyPercent:o,coverageFactor:a}=n;return{certificate:i,relative:Number(o)/Number(a)/100}}function NW({resolution:e}){let{si:r,siUnit:t}=Ev(e.text,e.unit);return t==="N"?Number(r):t==="m"?1e3*Number(r):null}function OW({scheme:e,entries:r},t){let{categories:n,combine:i,countPlaces:o,tieBreak:a}=e.rules,s=r.map(({variant:u,exclusion:l})=>({id:u,exclusion:l&&{effect:l.effect},values:Object.fromEntries(n.map(c=>{let f=t.get(u)?.get(c.quantity)?.estimate,d=f&&St(c,u,t).length===0;return[c.code,d?H(f.value,c.places):null]}))}));return Nv({categories:n,combine:i,countPlaces:o,tieBreak:a,entries:s})}function cy(e){let r=ly(e.evidence);return{...e,computed:r,certainty:bv(r,Ke(Ze(AW(e))))}}var AW=({evidence:{edition:e,submissions:r}})=>({edition:e.slug,scheme:e.scheme.rules,submissions:r.map(({reference:t,specimens:n})=>({reference:t,specimens:n}))}),ye=({house:e,isDemo:r,revision:t,publishedAt:n,evidence:{edition:i}})=>({formatVersion:1,house:e,isDemo:r,edition:{slug:i.slug,name:i.name,openedOn:i.opensOn,closedOn:i.closesOn},revision:t,publishedAt:n});function Yr({variants:e},r){let t=e.find(n=>n.slug===r);if(!t)throw new Error(`A release names a variant that is not among its inputs: ${r}`);return t}function fy(e,r,t,n){return{...ye(e),inputs:e,outputs:{results:EW(r),edition:t,categories:n}}}function EW({computed:{edition:e,results:r}}){return e.entries.flatMap(({variant:t})=>[...r.get(t)??[]].map(([n,{estimate:i}])=>({variant:t,quantity:n,value:En(i.value),standardUncertainty:i.standardUncertainty===null?null:En(i.standardUncertainty),degreesOfFreedom:i.standardUncertainty===null?null:En(Math.min(1e6,i.degreesOfFreedom))})))}function dy(e){return{...ye(e),makers:my(e.variants,({maker:r})=>r.slug).map(r=>({slug:r[0].maker.slug,name:r[0].maker.name,lines:my(r,({line:t})=>t.slug).map(t=>{let{line:n,material:i,construction:o,carriers:a}=t[0];return{slug:n.slug,name:n.name,material:i,construction:o,carriers:a,variants:t}})})),methods:vy(e).map(({slug:r,number:t})=>({slug:r,number:t})),checks:[...e.checks]}}function py(e){return vy(e).map(r=>{let{slug:t,name:n,number:i,effectiveFrom:o,effectiveUntil:a,wording:s,isComparableWithPrevious:u}=r;return{formatVersion:1,slug:t,name:n,number:i,effectiveFrom:o,effectiveUntil:a,...s,parameters:IW(r),limits:_W(r),checks:e.checks.map(({code:l})=>l),isComparableWithPrevious:u}})}var vy=({evidence:{edition:e},methods:r})=>e.methods.flatMap(({slug:t,number:n})=>r.filter(i=>i.slug===t&&i.number===n));function IW({parameters:{areaFrom:e,knot:r,abrasion:t,settings:n}}){return[...[["Cross-section from",e],["Knot",r],["Abrasion",t]].flatMap(([o,a])=>a===null?[]:[{name:o,value:a,unit:""}]),...n]}function _W({limits:e}){let r=({low:t,high:n})=>`${t} to ${n}`;return[{name:"Least number of valid specimens",value:String(e.minimumSpecimens),unit:""},{name:"Largest coefficient of variation",value:String(e.maximumCvPercent),unit:"%"},{name:"Largest share of breaks at the grip",value:String(e.gripBreakSharePercent),unit:"%"},...e.timeToBreakS?[{name:"Time to break",value:r(e.timeToBreakS),unit:"s"}]:[],{name:"Ambient temperature",value:r(e.ambientTemperatureC),unit:"°C"},{name:"Relative humidity",value:r(e.ambientHumidityPercent),unit:"%"}]}function my(e,r){let t=new Map;for(let n of[...e].sort((i,o)=>i.slug<o.slug?-1:1)){let i=t.get(r(n));i?i.push(n):t.set(r(n),[n])}return[...t].sort(([n],[i])=>n<i?-1:1).map(([,n])=>n)}function Pi(e,r){let t=r.map(n=>new Map(n.map(({id:i,place:o})=>[i,o])));return new Map(e.map(({id:n,place:i})=>[n,{...FW(n,i,t),runAtTop:RW(n,i,t)}]))}function FW(e,r,t){let n=t[0]?.get(e)??null;return n===null?{kind:t.some(i=>(i.get(e)??null)!==null)?"returned":"new",places:null}:r===null?{kind:"unchanged",places:null}:{kind:n===r?"unchanged":"moved",places:n-r}}function RW(e,r,t){if(r!==1)return 0;let n=t.findIndex(i=>i.get(e)!==1);return 1+(n===-1?t.length:n)}var Ta=e=>e==null?null:H(100*e,1),Ti=e=>({chanceOfFirstPercent:Ta(e?.chanceOfFirst),chanceOfFirstFivePercent:Ta(e?.chanceOfFirstFive),chanceAheadOfNextPercent:Ta(e?.chanceAheadOfNext)});function Ci(e){return e.map((r,t)=>r!==null&&e.some((n,i)=>i!==t&&n===r))}function gy(e,r){let{edition:t}=e.evidence,n=t.scheme.rules.categories.find(u=>u.code===r)?.method??"",i=t.methods.find(({slug:u})=>u===n)?.number??0,o=e.earlier[0]?.categories.find(u=>u.code===r);if(!o)return"first";if(o.method===n&&o.methodVersion===i)return"same";let a=e.methods.filter(({slug:u,number:l})=>u===n&&l>o.methodVersion&&l<=i);return o.method===n&&a.length>0&&a.every(u=>u.isComparableWithPrevious)?"changed":"notComparable"}function Di(e,r){return r===null?{kind:"notComparable",places:null,runAtTop:0}:e??{kind:"new",places:null,runAtTop:0}}var hy=e=>H(100*e,1);function yy({sensitivity:e}){if(!e)return null;let{leftOut:r,weights:t}=e;return{leftOut:r.map(MW),weights:t&&{firstPlaces:t.firstPlaces.map(({id:n,share:i})=>({variant:n,percent:hy(i)})),smallestChange:t.smallestChange&&{variant:t.smallestChange.id,weightMovedPercent:hy(t.smallestChange.weightMoved)}}}}function MW({kind:e,name:r,first:t,swappedPairs:n,swaps:i,dropped:o}){let[a,...s]=r.split(":");return{kind:e==="party"?a:e,name:e==="party"?s.join(":"):r,first:[...t],swappedPairs:n,swaps:i.map(([u,l])=>({ahead:u,behind:l})),dropped:[...o]}}function Ca(e){let{edition:r}=e.computed;return r.scheme.rules.categories.map(({code:t,name:n,quantity:i,unit:o,tradeUnit:a,direction:s,weight:u,method:l,conditions:c})=>({code:t,name:n,quantity:i,unit:o,tradeUnit:a,direction:s,weight:u,method:l,methodVersion:r.methods.find(({slug:f})=>f===l)?.number??0,conditions:c,comparability:gy(e,t)}))}function by(e,r){let{edition:t,submissions:n}=e.computed,{slug:i,name:o,words:a,number:s,rules:u}=t.scheme,l=n.flatMap(c=>c.specimens);return{...ye(e),previousEdition:t.previous,scheme:{slug:i,name:o,words:a,version:s,combine:u.combine,countPlaces:u.countPlaces,tieBreak:u.tieBreak,categories:Ca(e)},counts:{entries:t.entries.length,submissions:n.length,specimens:l.length,testers:new Set(n.map(({tester:c})=>c)).size,rigs:new Set(n.flatMap(({instruments:c})=>c.filter(({kind:f})=>f==="loadFrame"||f==="forceGauge").map(({code:f})=>f))).size,setAside:l.filter(({state:c})=>c==="setAside").length},overall:CW(e),incomplete:PW(e),excluded:LW(e),categoryTops:u.categories.map(({code:c})=>({category:c,variants:TW(e,c)})),sensitivity:yy(e.certainty),erratum:r}}function PW(e){let{edition:r,standings:t,results:n}=e.computed;return t.incomplete.map(({id:i,missing:o})=>({variant:Yr(e,i),missing:[...o],needs:r.scheme.rules.categories.flatMap(a=>St(a,i,n).map(yv))}))}function TW(e,r){let t=e.computed.standings.categories[r]??[],n=e.certainty.categories.get(r),i=({id:o,place:a})=>n?.size?n.get(o)?.group===1:a===1;return t.filter(i).map(({id:o})=>Yr(e,o))}function CW(e){let{standings:r}=e.computed,t=DW(e),n=Ci(r.overall.map(({place:i})=>i));return r.overall.map(({id:i,place:o,placeIfIncluded:a,score:s,categoryPlaces:u},l)=>{let c=Yr(e,i),f=e.certainty.overall.get(i);return{variant:c,place:o,placeIfIncluded:a,isTied:n[l]??!1,group:f?.group??null,placeInterval:f?{low:f.low,high:f.high}:null,movement:Di(t.get(c.slug),o),...Ti(f),score:s,categoryPlaces:{...u}}})}function DW(e){let r=e.computed.standings.overall.map(({id:t,place:n})=>({id:t,place:n}));return Pi(r,e.earlier.map(({overall:t})=>t.map(({variant:n,place:i})=>({id:n,place:i}))))}function LW(e){let{edition:r,standings:t}=e.computed;return r.entries.flatMap(({variant:n,exclusion:i})=>{if(!i)return[];let o=t.overall.find(({id:s})=>s===n),a=i.reasonCode;return[{variant:Yr(e,n),reasonCode:a,words:i.words,effect:i.effect,placeIfIncluded:o?.placeIfIncluded??null}]})}function qy(e,r){let{factor:t,divisor:n,offset:i}=ir[li(r)],o=oi(e,"convert").times(n).div(t).minus(i).toSignificantDigits(tn);return o.isZero()?"0":o.toString()}var _t={breakingForce:{unit:"N",places:1,tradeUnit:"lbf",tradePlaces:2},apparentStress:{unit:"MPa",places:1,tradeUnit:"psi",tradePlaces:0},diameter:{unit:"mm",places:3,tradeUnit:"in",tradePlaces:4},outOfRoundness:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},linearDensity:{unit:"tex",places:2,tradeUnit:"den",tradePlaces:0},knotRetention:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},abrasionRetention:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},strengthHonesty:{unit:"%",places:1,tradeUnit:null,tradePlaces:null}};function kW(e,r,t,n){let{factor:i,divisor:o}=ir[r];return H(qy(e*Number(i)/Number(o),t),n)}var Ft=(e,r)=>Da(e.quantity,e.estimate.value,Jh(e.estimate),e,r);function Da(e,r,t,{specimens:n,submissions:i,testers:o,rigs:a,note:s},{unit:u,places:l,tradeUnit:c,tradePlaces:f}){let d=v=>H(v,l),p=v=>kW(v,u,c??u,f??l);return{quantity:e,unit:u,value:d(r),low:t&&d(t.low),high:t&&d(t.high),trade:c===null?null:{unit:c,value:p(r),low:t&&p(t.low),high:t&&p(t.high)},specimens:n,submissions:i,testers:o,rigs:a,note:s}}var wy=1e6;function Sy(e,r=3,t=.8,n=.05){oe(e,"cvPercent","specimensToTell"),oe(r,"differencePercent","specimensToTell"),Se(t,"specimensToTell"),Se(n,"specimensToTell");let i=o=>{let a=o===1/0?1/0:2*o-2;return 2*((ar(1-n/2,a)+ar(t,a))*e/r)**2};for(let o=Math.max(2,Math.floor(i(1/0)));o<=wy;o++)if(o>=i(o))return o;throw new E("uncertainty/too-many-specimens",`specimensToTell: more than ${wy} specimens would be needed for CV ${e} % and ${r} %. Ask for a larger difference.`)}var UW=e=>e==="apparentStress"||e==="strengthHonesty"?"breakingForce":e;function Ny({computed:{spreads:e}},r){let{typicalCvPercent:t,between:n}=e[UW(r)];return{specimenPercent:t===null?null:H(t,1),betweenSubmissionsPercent:H(n.relativePercent,1),degreesOfFreedom:n.degreesOfFreedom,specimensToTell:t===null||t===0?null:Sy(t)}}var $W=.05;function Oy(e){return Ca(e).map(r=>({...ye(e),category:r,spread:Ny(e,r.quantity),rows:BW(e,r)}))}function BW(e,r){let{standings:t,results:n,edition:i}=e.computed,o=i.scheme.rules.categories.find(({code:l})=>l===r.code),a=t.categories[r.code]??[],s=Ci(a.map(({place:l})=>l)),u=HW(e,r,a);return a.flatMap(({id:l,place:c,placeIfIncluded:f},d)=>{let p=n.get(l)?.get(r.quantity);if(!p||!o)return[];let v=Yr(e,l),g=e.certainty.categories.get(r.code)?.get(l);return[{variant:v,place:c,placeIfIncluded:f,isTied:s[d]??!1,group:g?.group??null,placeInterval:g?{low:g.low,high:g.high}:null,movement:Di(u(v.slug),c),...Ti(g),figure:Ft(p,o),change:jW(e,r,v.slug,p.estimate)}]})}function HW(e,r,t){let n=t.map(({id:a,place:s})=>({id:a,place:s})),i=e.earlier.map(({categories:a})=>(a.find(({code:s})=>s===r.code)?.rows??[]).map(({variant:s,place:u})=>({id:s,place:u}))),o=Pi(n,i);return a=>{let s=o.get(a)??{kind:"new",places:null,runAtTop:0};return r.comparability==="notComparable"&&s.kind!=="new"?{...s,kind:"notComparable",places:null}:s}}function jW(e,r,t,n){let i=e.earlier[0]?.results.find(({variant:d,quantity:p})=>d===t&&p===r.quantity);if(!i)return{kind:"first",percent:null};if(r.comparability==="notComparable")return{kind:"notComparable",percent:null};let o=Number(i.value),a=H(100*(n.value-o)/o,1);if(n.standardUncertainty===null||i.standardUncertainty===null)return{kind:"withinNoise",percent:a};let[s,u]=[n.standardUncertainty**2,Number(i.standardUncertainty)**2],l=(s+u)**2/(s**2/n.degreesOfFreedom+u**2/Number(i.degreesOfFreedom)),c=Math.abs(n.value-o)/Math.sqrt(s+u);return{kind:2*(1-Uh(c,Math.min(1e6,l)))<$W?"changed":"withinNoise",percent:a}}var WW=1e3;function Ay(e,{value:r,standardUncertainty:t,degreesOfFreedom:n,budget:i}){if(t===null)return[];let o=i.map(({name:s,sharePercent:u})=>({...VW(s),sharePercent:u})),a=Map.groupBy(o,({component:s,of:u})=>`${s} ${u??""}`);return[{category:e,standardUncertaintyPercent:H(100*t/r,2),degreesOfFreedom:n>WW?null:Math.floor(n),lines:[...a.values()].map(s=>({first:s[0],share:s.reduce((u,{sharePercent:l})=>u+l,0)})).sort((s,u)=>u.share-s.share).flatMap(({first:s,share:u})=>s?[{component:s.component,of:s.of,sharePercent:H(u,1)}]:[])}]}function VW(e){let[,r,t]=/^(tester|rig|certificate):(.+?)(?:\/[a-zA-Z]+)?$/.exec(e)??[];return r===void 0?{component:"repeatability",of:null}:{component:r,of:t??null}}function Ey(e,r){if(Pe(e,"measured","claimRatioPercent"),!(r>0&&r<1/0))throw new E("claims/zero-claim",`claimRatioPercent: the claim is ${r}, expected a finite number above 0. Leave the ratio out.`);return 100*e/r}function Iy(e,r,t){oe(e,"claimed","claimLimits"),Pe(r,"tolerancePercent","claimLimits");let n=e*r/100;return{...t!=="at-most"&&{low:e-n},...t!=="at-least"&&{high:e+n}}}function GW(e,r,t){QW(e,t),Pe(r,"standardUncertainty","conformityProbability");let{low:n=-1/0,high:i=1/0}=t;if(r===0)return e>=n&&e<=i?1:0;let[o,a]=[(n-e)/r,(i-e)/r];return o>0?Zr(-o)-Zr(-a):Zr(a)-Zr(o)}function _y(e,r,t,n){Pe(r,"expandedUncertainty","decideClaim"),oe(t,"coverageFactor","decideClaim");let i=GW(e,r/t,n);return{conformityProbability:i,verdict:XW(i)}}function XW(e){if(!(e>=0&&e<=1))throw new E("distributions/out-of-domain",`claimVerdict: p is ${e}, expected 0 ≤ p ≤ 1. Give a probability.`);return e>=.95?"meets":e>=.8?"probably meets":e<=.05?"falls short":e<=.2?"probably falls short":"cannot say"}function QW(e,{low:r,high:t}){if(r===void 0&&t===void 0)throw new E("claims/no-limit","conformityProbability: found no limit, expected low, high or both. State what the claim bounds.");let n=[e,r,t].find(i=>i!==void 0&&!Number.isFinite(i));if(n!==void 0)throw new E("measurement/not-a-number",`conformityProbability: found ${n}, expected finite numbers. Leave out a limit that is not there.`);if(r!==void 0&&t!==void 0&&r>t)throw new E("claims/bad-limits",`conformityProbability: low is ${r} and high is ${t}, expected low ≤ high. Swap the limits.`)}var KW={meets:"meets","probably meets":"probablyMeets","cannot say":"cannotSay","probably falls short":"probablyFallsShort","falls short":"fallsShort"},Fy={breakingForce:{factor:1,unit:"N",sense:"at-least"},diameter:{factor:1e3,unit:"mm",sense:"at-most"},linearDensity:{factor:1e6,unit:"tex",sense:"within"},peNumber:{factor:1,unit:"PE",sense:"within"}},ZW={"at-least":0,"at-most":0,within:5};function Ry(e,r){let t=e.computed.results.get(r);return e.evidence.claims.filter(n=>n.variant===r).map(({quantity:n,basis:i,printed:o,valueSi:a,seenOn:s,source:u})=>{let{factor:l,unit:c}=Fy[n],f=Number(a)*l,d=t?.get(n);return{quantity:n,basis:i,printed:o,value:H(f,4),unit:c,seenOn:s,source:u,measured:d?Ft(d,_t[d.quantity]):null,ratioPercent:d?H(Ey(d.estimate.value,f),1):null,decision:d?JW(d,f,n):null}})}function JW({estimate:e},r,t){if(e.standardUncertainty===null)return null;let{sense:n}=Fy[t];return KW[_y(e.value,e.standardUncertainty,1,Iy(r,ZW[n],n)).verdict]}var La=({house:e,revision:r,evidence:{edition:t,withdrawn:n}})=>n.map(({reference:i,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:l,reason:c})=>({reference:i,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:l,reason:c,citation:`${e}: submission ${i}, withdrawn on ${l}. ${t.name}, edition ${t.slug}, revision ${r}.`})),My=e=>({...ye(e),items:La(e)});function Ty(e){let{reference:r,revision:t,method:n,tester:i,reviewer:o,spool:a,benchDay:s,specimens:u,findings:l}=e;return{reference:r,revision:t,method:n.slug,methodVersion:n.number,tester:i,reviewer:o,rig:Pa(e),instruments:e.instruments.map(({code:c,certificate:f})=>({code:c,calibration:f})),spool:a,benchDay:s,figures:YW(e),findings:l.map(({code:c,message:f,resolution:d})=>({code:c,message:f,resolution:d})),specimens:u.map(({number:c,condition:f,state:d,reason:p,readings:v})=>({number:c,condition:f,state:d,reason:p,readings:v.map(({role:g,station:y,enteredText:h,enteredUnit:q,valueSi:b,siUnit:N})=>({role:g,station:y,entered:{text:h,unit:q},value:b,unit:N}))}))}}function YW(e){let{breakingForceN:r,diameterMm:t,outOfRoundnessPercent:n,linearDensityTex:i,retentionPercent:o,treatedForceN:a}=Ri(e),s=e.method.slug==="named-knot";return[...[["breakingForce",r],["diameter",t],["outOfRoundness",n],["linearDensity",i]].flatMap(([l,c])=>c?[Py(l,c.n,{...c,value:c.mean})]:[]),...o?[Py(s?"knotRetention":"abrasionRetention",(r?.n??0)+(a?.n??0),o)]:[]]}function Py(e,r,{value:t,low95:n,high95:i}){return Da(e,t,n===null||i===null?null:{low:n,high:i},{specimens:r,submissions:1,testers:1,rigs:1,note:null},_t[e])}function Cy(e,r,t){return e.variants.map(n=>zW(e,n,r,t))}function zW(e,r,t,n){let i=t.excluded.find(c=>c.variant.slug===r.slug),o=t.incomplete.find(c=>c.variant.slug===r.slug),a=t.overall.find(c=>c.variant.slug===r.slug),s=n.flatMap(({category:c,rows:f})=>f.filter(d=>d.variant.slug===r.slug).map(({variant:d,...p})=>({category:c,row:p}))),u=i?"excluded":o?"incomplete":"placed",l=e.computed.results.get(r.slug)??new Map;return{...ye(e),variant:r,outcome:u,exclusion:i?{reasonCode:i.reasonCode,words:i.words,effect:i.effect,placeIfIncluded:i.placeIfIncluded}:null,missing:o?.missing??[],overall:a?xW(a):null,categories:s,figures:[...l].map(([c,f])=>Ft(f,_t[c])),claims:Ry(e,r.slug),submissions:e.evidence.submissions.filter(c=>c.variant===r.slug).map(Ty),withdrawn:La(e).filter(c=>c.variant===r.slug),spools:eV(e,r.slug),budgets:e.evidence.edition.scheme.rules.categories.flatMap(({code:c,quantity:f})=>{let d=e.computed.results.get(r.slug)?.get(f);return d?Ay(c,d.estimate):[]}),history:[...rV(e,r.slug),tV(e,u,a?.place??null,s)],siblings:e.variants.filter(({line:c,slug:f})=>c.slug===r.line.slug&&f!==r.slug)}}var xW=({variant:e,...r})=>r;function eV(e,r){let t=new Set(e.evidence.submissions.map(({spool:n})=>n));return e.spools.filter(({variant:n,code:i})=>n===r&&t.has(i)).map(({code:n,source:i,obtainedOn:o,place:a,lot:s,reidentifications:u})=>({code:n,source:i,obtainedOn:o,place:a,lot:s,reidentified:u.at(-1)?.reason??null}))}function rV(e,r){return e.earlier.flatMap(({history:t})=>t.find(({variant:n})=>n===r)?.point??[]).reverse()}function tV(e,r,t,n){return{edition:e.evidence.edition.slug,revision:e.revision,overallPlace:t,outcome:r,categories:n.map(({category:i,row:o})=>({code:i.code,place:o.place,value:o.figure.value,low:o.figure.low,high:o.figure.high,unit:o.figure.unit,trade:o.figure.trade,methodVersion:i.methodVersion,isBreak:i.comparability==="notComparable"}))}}function nV({edition:e,categories:r}){let t=e.overall.flatMap(({variant:a,place:s,placeIfIncluded:u,score:l})=>[[`overall, ${a.slug}, place`,s===null?`(${u??"unplaced"})`:String(s)],[`overall, ${a.slug}, score`,l]]),n=r.flatMap(({category:a,rows:s})=>s.flatMap(({variant:u,place:l,figure:c})=>[[`${a.code}, ${u.slug}, place`,String(l??"unplaced")],[`${a.code}, ${u.slug}, value`,`${c.value} ${c.unit}`]])),i=e.overall.some(({group:a})=>a!==null),o=e.overall.filter(({place:a,group:s})=>i?s===1:a===1).map(({variant:a})=>a.slug);return{cells:Object.fromEntries([...t,...n]),top:o}}function Dy({reasonCode:e,words:r,expects:t,before:n},i){let o=nV(i),a=[...new Set([...Object.keys(n.cells),...Object.keys(o.cells)])].filter(c=>n.cells[c]!==o.cells[c]).sort().map(c=>({where:c,before:n.cells[c]??null,after:o.cells[c]??null})),s=c=>a.filter(({where:f})=>f.endsWith(c)).length,u=n.top.join()===o.top.join()?"top group unchanged":"top group changed",l=(c,f)=>`${c} ${f}${c===1?"":"s"} changed`;return{reasonCode:e,words:r,expected:[...t],changes:a,consequences:`${l(s(", value"),"value")}, ${l(s(", place"),"place")}, ${u}`}}function Ly(e){return[...e.earlier.map(t=>{let n=new Map(t.results.map(({variant:i,quantity:o,value:a})=>[`${i} ${o}`,Number(a)]));return{edition:t.edition,places:new Map([["overall",t.overall],...t.categories.map(({code:i,rows:o})=>[i,o])]),methodVersions:new Map(t.categories.map(({code:i,methodVersion:o})=>[i,o])),valueOf:(i,o)=>n.get(`${i} ${o}`)}}).reverse(),iV(e)]}function iV({computed:{edition:e,standings:r,results:t}}){let n=i=>i.map(({id:o,place:a})=>({variant:o,place:a}));return{edition:e.slug,places:new Map([["overall",n(r.overall)],...Object.entries(r.categories).map(([i,o])=>[i,n(o)])]),methodVersions:new Map(e.scheme.rules.categories.map(({code:i,method:o})=>[i,e.methods.find(({slug:a})=>a===o)?.number??0])),valueOf:(i,o)=>[...t.get(i)??[]].find(([a])=>a===o)?.[1].estimate.value}}var ky=(e,r)=>H(e,r);var ka=[0,50,100,200,400],oV=e=>ka.filter(r=>e>=r).at(-1)??0;function Uy(e,r){return e.evidence.edition.scheme.rules.categories.flatMap(t=>{let n=aV(e,t,r),i=n.flatMap(o=>sV(o,t));return[...Map.groupBy(i,({from:o})=>o)].sort(([o],[a])=>o-a).map(([o,a])=>uV(t,o,a,n[0]?.edition??"",e.evidence.edition.slug))})}function aV({methods:e},{code:r,method:t},n){let i=n.filter(({methodVersions:s})=>s.has(r)),o=(s,u)=>{let[l,c]=[u.methodVersions.get(r)??0,s.methodVersions.get(r)??0];return e.some(f=>f.slug===t&&f.number>l&&f.number<=c&&!f.isComparableWithPrevious)},a=i.findLastIndex((s,u)=>u>0&&o(s,i[u-1]??s));return i.slice(Math.max(0,a))}function sV(e,{code:r,quantity:t,places:n}){return(e.places.get(r)??[]).flatMap(({variant:i,place:o})=>{let[a,s]=[e.valueOf(i,t),e.valueOf(i,"breakingForce")];return o===null||a===void 0||s===void 0?[]:[{edition:e.edition,variant:i,from:oV(s),value:ky(a,n)}]})}function uV({code:e,unit:r,direction:t},n,i,o,a){let s=(d,p)=>t==="more"?Number(d)>Number(p):Number(d)<Number(p),u=i.reduce((d,p)=>s(p.value,d.value)?p:d),l=i.filter(({value:d})=>d===u.value),[c=u,...f]=l;return{category:e,strengthFromN:n,strengthBelowN:ka[ka.indexOf(n)+1]??null,value:c.value,unit:r,variant:c.variant,edition:c.edition,equalled:f.map(({variant:d,edition:p})=>({variant:d,edition:p})),isNew:c.edition===a,since:o}}function $y(e){return[...new Set(e.flatMap(({places:t})=>[...t.keys()]))].flatMap(t=>lV(t,e).sort((n,i)=>i.editions.length-n.editions.length))}function lV(e,r){let t=[],n=new Map;for(let{edition:i,places:o}of r){let a=(o.get(e)??[]).filter(({place:s})=>s===1).map(({variant:s})=>s);for(let[s,u]of n)a.includes(s)||t.push({table:e,variant:s,editions:u,isGoingOn:!1});n=new Map(a.map(s=>[s,[...n.get(s)??[],i]]))}return[...t,...[...n].map(([i,o])=>({table:e,variant:i,editions:o,isGoingOn:!0}))]}function By(e){let r=Ly(e);return{...ye(e),records:Uy(e,r),runs:$y(r)}}var Te=(e,r)=>({path:e,mediaType:"application/json",content:Ze(r)});function Hy({house:e,isDemo:r,revision:t,publishedAt:n,licence:i,softwareVersion:o,evidence:a}){let{slug:s,name:u}=a.edition,l=n.slice(0,10);return{path:"README.md",mediaType:"text/markdown; charset=utf-8",content:`# ${e}: ${u}, revision ${t}

Published on ${l}.${r?" **Invented for demonstration: no maker, line, person or number in it is real.**":""}

## What is in this folder

- \`bundle.json\`: every input (readings as entered, methods, calibrations, scheme, names) and every output. Canonical JSON (RFC 8785); numbers that matter are decimal text.
- \`documents/\`: the same outputs, one page a file.
- \`csv/\` and \`datapackage.json\`: tables for spreadsheets and programs, with units and keys (Data Package 2.0).
- \`blind-key.txt\`: which blind code stood for which variant; its SHA-256 was published when the edition opened.
- \`manifest.json\`: SHA-256 of each file, and of the manifest of the release before. Its own SHA-256 is the digest of this release.
- \`signature.json\`: Ed25519 signature (RFC 8032) of the manifest, with the public key.
- \`verify.mjs\`: recomputes everything. Needs Node 20 or newer and nothing else.

## How to verify

    node verify.mjs

says how many figures were recomputed and whether all are equal. Compare the digest and the key that it prints with those that the publisher shows.

## How to cite

${e} (${l.slice(0,4)}). ${u}, edition ${s}, revision ${t} [data set]. Published ${l}. Cite the digest too.

## Licence and allowed use

${i.title} (${i.name}), ${i.path}. Copy, combine and build on it if you name the publisher and say what you changed.
A published figure describes the spools that were tested. It is no warranty, and no basis for lifting, climbing, towing or rescue: for those take rated equipment and qualified people.

## Format

Version 1, written by Fairpull ${o}. A later version only adds, or gets a new number.

- 1 (2026-11): first version.
`}}var k=(e,r)=>({name:e,type:"string",description:r}),ae=(e,r)=>({name:e,type:"integer",description:r}),Ae=(e,r)=>({name:e,type:"number",description:r}),se=e=>({...e,isOptional:!0});var Rr=k("variant","Variant, by its slug"),zr={columns:["variant"],table:"variants",references:["variant"]},Li=k("submission","Reference of the submission"),Ua={columns:["submission"],table:"submissions",references:["submission"]};var jy=e=>[cV(e),fV(e)],cV=e=>({name:"variants",title:"Variants of the edition",columns:[Rr,k("maker","Maker"),k("line","Line"),k("size","Size as on the label"),k("colour","Colour as on the label"),k("material","Material"),k("construction","How the line is made"),se(ae("carriers","Ends braided")),se(Ae("pe number","PE number on the label")),k("outcome","Placed, incomplete or excluded in this edition")],primaryKey:["variant"],foreignKeys:[],rows:e.map(({variant:{slug:r,maker:t,line:n,size:i,colour:o,material:a,construction:s,carriers:u,peNumber:l},outcome:c})=>({variant:r,maker:t.name,line:n.name,size:i,colour:o,material:a,construction:s,carriers:u,"pe number":l,outcome:c}))}),fV=e=>({name:"claims",title:"What labels claim, beside what was measured",columns:[Rr,k("quantity","What is claimed"),k("basis","What the label says that the number is: average, minimum, maximum, class, or not stated"),k("printed","Number as printed"),k("printed unit","Unit as printed"),Ae("claimed","The claim in the unit of the column after it"),k("unit","Unit of claimed and measured"),se(Ae("measured","Measured value")),se({...Ae("measured to claimed","Measured over claimed"),unit:"%"}),se(k("decision","Decision after JCGM 106"))],primaryKey:["variant","quantity"],foreignKeys:[zr],rows:e.flatMap(({variant:r,claims:t})=>t.map(({quantity:n,basis:i,printed:o,value:a,unit:s,measured:u,ratioPercent:l,decision:c})=>({variant:r.slug,quantity:n,basis:i,printed:o.text,"printed unit":o.unit,claimed:a,unit:s,measured:u?.value??null,"measured to claimed":l,decision:c})))});var mV=/\\(\\)?/g,dV=RegExp(`[^.[\\]]+|\\[(?:([^"'][^[]*)|(["'])((?:(?!\\2)[^\\\\]|\\\\.)*?)\\2)\\]|(?=(?:\\.|\\[\\])(?:\\.|\\[\\]|$))`,"g"),pV=/\.|\[(?:[^[\]]*|(["'])(?:(?!\1)[^\\]|\\.)*?\1)\]/,vV=/^\w*$/,gV=function(e){return Object.prototype.toString.call(e)},Wy=function(e){let r=typeof e;return r==="symbol"||r==="object"&&e&&gV(e)==="[object Symbol]"},hV=function(e,r){if(Array.isArray(e))return!1;let t=typeof e;return t==="number"||t==="symbol"||t==="boolean"||!e||Wy(e)?!0:vV.test(e)||!pV.test(e)||r!=null&&e in Object(r)},yV=function(e){let r=[];return e.charCodeAt(0)===46&&r.push(""),e.replace(dV,function(t,n,i,o){let a=t;i?a=o.replace(mV,"$1"):n&&(a=n.trim()),r.push(a)}),r},bV=function(e,r){return Array.isArray(e)?e:hV(e,r)?[e]:yV(e)},qV=function(e){if(typeof e=="string"||Wy(e))return e;let r=`${e}`;return r=="0"&&1/e==-1/0?"-0":r},Vy=function(e,r){r=bV(r,e);let t=0,n=r.length;for(;e!=null&&t<n;)e=e[qV(r[t++])];return t&&t===n?e:void 0};var Gy=function(e){return typeof e=="object"&&e!==null&&!Array.isArray(e)};var ki=function(e){if(e==null)return[void 0,void 0];if(typeof e!="object")return[Error('Invalid option "columns": expect an array or an object')];if(Array.isArray(e)){let r=[];for(let t of e)if(typeof t=="string")r.push({key:t,header:t});else if(typeof t=="object"&&t!==null&&!Array.isArray(t)){if(!t.key)return[Error('Invalid column definition: property "key" is required')];t.header===void 0&&(t.header=t.key),r.push(t)}else return[Error("Invalid column definition: expect a string or an object")];e=r}else{let r=[];for(let t in e)r.push({key:t,header:e[t]});e=r}return[void 0,e]};var Ce=class e extends Error{constructor(r,t,...n){Array.isArray(t)&&(t=t.join(" ")),super(t),Error.captureStackTrace!==void 0&&Error.captureStackTrace(this,e),this.code=r;for(let i of n)for(let o in i){let a=i[o];this[o]=Buffer.isBuffer(a)?a.toString():a==null?a:JSON.parse(JSON.stringify(a))}}};var Xy=function(e){return e.replace(/([A-Z])/g,function(r,t){return"_"+t.toLowerCase()})};var Ui=function(e){let r={};for(let i in e)r[Xy(i)]=e[i];if(r.bom===void 0||r.bom===null||r.bom===!1)r.bom=!1;else if(r.bom!==!0)return[new Ce("CSV_OPTION_BOOLEAN_INVALID_TYPE",["option `bom` is optional and must be a boolean value,",`got ${JSON.stringify(r.bom)}`])];if(r.delimiter===void 0||r.delimiter===null)r.delimiter=",";else if(Buffer.isBuffer(r.delimiter))r.delimiter=r.delimiter.toString();else if(typeof r.delimiter!="string")return[new Ce("CSV_OPTION_DELIMITER_INVALID_TYPE",["option `delimiter` must be a buffer or a string,",`got ${JSON.stringify(r.delimiter)}`])];if(r.quote===void 0||r.quote===null)r.quote='"';else if(r.quote===!0)r.quote='"';else if(r.quote===!1)r.quote="";else if(Buffer.isBuffer(r.quote))r.quote=r.quote.toString();else if(typeof r.quote!="string")return[new Ce("CSV_OPTION_QUOTE_INVALID_TYPE",["option `quote` must be a boolean, a buffer or a string,",`got ${JSON.stringify(r.quote)}`])];if((r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),r.escape_formulas===void 0||r.escape_formulas===null)r.escape_formulas=!1;else if(typeof r.escape_formulas!="boolean")return[new Ce("CSV_OPTION_ESCAPE_FORMULAS_INVALID_TYPE",["option `escape_formulas` must be a boolean,",`got ${JSON.stringify(r.escape_formulas)}`])];if((r.quoted_empty===void 0||r.quoted_empty===null)&&(r.quoted_empty=void 0),r.quoted_match===void 0||r.quoted_match===null||r.quoted_match===!1?r.quoted_match=null:Array.isArray(r.quoted_match)||(r.quoted_match=[r.quoted_match]),r.quoted_match)for(let i of r.quoted_match){let o=typeof i=="string",a=i instanceof RegExp;if(!o&&!a)return[new Ce("CSV_OPTION_QUOTED_MATCH",["option `quoted_match` must be a string or a regex,",`got ${JSON.stringify(r.quoted_match)}`])]}if((r.quoted_string===void 0||r.quoted_string===null)&&(r.quoted_string=!1),(r.eof===void 0||r.eof===null)&&(r.eof=!0),r.escape===void 0||r.escape===null)r.escape='"';else if(Buffer.isBuffer(r.escape))r.escape=r.escape.toString();else if(typeof r.escape!="string")return[Error(`Invalid Option: escape must be a buffer or a string, got ${JSON.stringify(r.escape)}`)];if(r.escape.length>1)return[Error(`Invalid Option: escape must be one character, got ${r.escape.length} characters`)];if(r.header===void 0||r.header===null||r.header===!1)r.header=!1;else if(r.header!==!0)throw new Ce("CSV_INVALID_OPTION_HEADER",["option `header` is expected to be a boolean,",`got ${JSON.stringify(r.header)}`],r);if(r.header_as_comment===void 0||r.header_as_comment===null||r.header_as_comment===!1)r.header_as_comment=!1;else if(r.header_as_comment===!0)r.header_as_comment="#";else if(Buffer.isBuffer(r.header_as_comment))r.header_as_comment=r.header_as_comment.toString();else if(typeof r.header_as_comment!="string")throw new Ce("CSV_INVALID_OPTION_HEADER_AS_COMMENT",["option `header_as_comment` must be a boolean, a string or a buffer,",`got ${JSON.stringify(r.header_as_comment)}`],r);let[t,n]=ki(r.columns);if(t!==void 0)return[t];if(r.columns=n,(r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),(r.cast===void 0||r.cast===null)&&(r.cast={}),(r.cast.bigint===void 0||r.cast.bigint===null)&&(r.cast.bigint=i=>""+i),(r.cast.boolean===void 0||r.cast.boolean===null)&&(r.cast.boolean=i=>i?"1":""),(r.cast.date===void 0||r.cast.date===null)&&(r.cast.date=i=>""+i.getTime()),(r.cast.number===void 0||r.cast.number===null)&&(r.cast.number=i=>""+i),(r.cast.object===void 0||r.cast.object===null)&&(r.cast.object=i=>JSON.stringify(i)),(r.cast.string===void 0||r.cast.string===null)&&(r.cast.string=function(i){return i}),r.on_record!==void 0&&typeof r.on_record!="function")return[Error('Invalid Option: "on_record" must be a function.')];if(r.quote_record_delimiter===void 0||r.quote_record_delimiter===null)r.quote_record_delimiter=!r.record_delimiter;else if(typeof r.quote_record_delimiter!="boolean")return[new Ce("CSV_OPTION_QUOTE_RECORD_DELIMITER_INVALID_TYPE",["option `quote_record_delimiter` must be a boolean,",`got ${JSON.stringify(r.quote_record_delimiter)}`])];if(r.record_delimiter===void 0||r.record_delimiter===null)r.record_delimiter=`
`;else if(Buffer.isBuffer(r.record_delimiter))r.record_delimiter=r.record_delimiter.toString();else if(typeof r.record_delimiter!="string")return[Error(`Invalid Option: record_delimiter must be a buffer or a string, got ${JSON.stringify(r.record_delimiter)}`)];switch(r.record_delimiter){case"unix":r.record_delimiter=`
`;break;case"mac":r.record_delimiter="\r";break;case"windows":r.record_delimiter=`\r
`;break;case"ascii":r.record_delimiter="";break;case"unicode":r.record_delimiter="\u2028";break}return[void 0,r]};var wV=Buffer.from([239,187,191]),Qy=function(e,r){return r.some(t=>t.length!==0&&(e.indexOf(t)!==-1||t.length>1&&(e+t).indexOf(t)<e.length))},Ky=function(e,r){return r?r.some(t=>typeof t=="string"?e.indexOf(t)!==-1:e.search(t)!==-1):!1},Zy=function(e,r,t){return{options:e,state:r,info:t,__transform:function(n,i){if(!Array.isArray(n)&&typeof n!="object")return Error(`Invalid Record: expect an array or an object, got ${JSON.stringify(n)}`);if(this.info.records===0){if(Array.isArray(n)){if(this.options.header===!0&&this.options.columns===void 0)return Error("Undiscoverable Columns: header option requires column option or object records")}else if(this.options.columns===void 0){let[s,u]=ki(Object.keys(n));if(s)return;this.options.columns=u}}if(this.info.records===0){this.bom(i);let s=this.headers(i);if(s)return s}try{this.options.on_record&&this.options.on_record(n,this.info.records)}catch(s){return s}let o,a;if(this.options.eof){if([o,a]=this.stringify(n),o)return o;if(a===void 0)return;a=a+this.options.record_delimiter}else{if([o,a]=this.stringify(n),o)return o;if(a===void 0)return;(this.options.header||this.info.records)&&(a=this.options.record_delimiter+a)}this.info.records++,i(a)},stringify:function(n,i=!1){if(typeof n!="object")return[void 0,n];let{columns:o}=this.options,a=[];if(Array.isArray(n)){let u=o?Math.min(n.length,o.length):n.length;for(let l=0;l<u;l++){let c=n[l],[f,d]=this.__cast(c,{index:l,column:l,records:this.info.records,header:i});if(f)return[f];a[l]=[d,c]}}else for(let u=0;u<o.length;u++){let l=Vy(n,o[u].key),[c,f]=this.__cast(l,{index:u,column:o[u].key,records:this.info.records,header:i});if(c)return[c];a[u]=[f,l]}let s="";for(let u=0;u<a.length;u++){let l,c,[f,d]=a[u];if(typeof f=="string")l=this.options;else if(Gy(f)){if(l={...f},f=l.value,delete l.value,typeof f!="string"&&f!==void 0&&f!==null&&c)return[Error(`Invalid Casting Value: returned value must return a string, null or undefined, got ${JSON.stringify(f)}`)];if(l={...this.options,...l},[c,l]=Ui(l),c!==void 0)return[c]}else if(f==null)l=this.options;else return[Error(`Invalid Casting Value: returned value must return a string, an object, null or undefined, got ${JSON.stringify(f)}`)];let{delimiter:p,escape:v,quote:g,quoted:y,quoted_empty:h,quoted_string:q,quoted_match:b,record_delimiter:N,quote_record_delimiter:O,escape_formulas:I}=l;if(f===""&&d==="")(Ky(f,b)||h===!0||q===!0&&h!==!1)===!0&&(f=g+f+g),s+=f;else if(f){if(typeof f!="string")return[Error(`Formatter must return a string, null or undefined, got ${JSON.stringify(f)}`)];let A=Qy(f,[p]),M=g!==""&&f.indexOf(g)>=0,C=f.indexOf(v)>=0&&v!==g,K=Qy(f,[N,...O===!1?[]:[`
`,"\r"]]),W=q&&typeof d=="string",G=Ky(f,b);if(I)switch(f[0]){case"-":if(typeof d=="number"||typeof d=="bigint")break;f=`'${f}`;break;case"=":case"+":case"@":case"	":case"\r":case"＝":case"＋":case"－":case"＠":f=`'${f}`;break}let z=M===!0||A||K||y||W||G;z===!0&&C===!0&&(f=f.replaceAll(v,()=>v+v)),M===!0&&(f=f.replaceAll(g,()=>v+g)),z===!0&&(f=g+f+g),s+=f}else(h===!0||d===""&&q===!0&&h!==!1)&&(s+=g+g);u!==a.length-1&&(s+=p)}return[void 0,s]},bom:function(n){this.options.bom===!0&&n(wV)},headers:function(n){if(this.options.header===!1||this.options.columns===void 0)return;let i,o=this.options.columns.map(a=>a.header);if(this.options.eof?([i,o]=this.stringify(o,!0),o+=this.options.record_delimiter):[i,o]=this.stringify(o,!0),i)return i;this.options.header_as_comment&&(o=this.options.header_as_comment+" "+o),n(o)},__cast:function(n,i){let o=typeof n;try{return o==="string"?[void 0,this.options.cast.string(n,i)]:o==="bigint"?[void 0,this.options.cast.bigint(n,i)]:o==="number"?[void 0,this.options.cast.number(n,i)]:o==="boolean"?[void 0,this.options.cast.boolean(n,i)]:n instanceof Date?[void 0,this.options.cast.date(n,i)]:o==="object"&&n!==null?[void 0,this.options.cast.object(n,i)]:n===null&&this.options.cast.null!==void 0?[void 0,this.options.cast.null(n,i)]:n===void 0&&this.options.cast.undefined!==void 0?[void 0,this.options.cast.undefined(n,i)]:[void 0,n]}catch(a){return[a]}}}};var Jy=function(e,r={}){let t=[],[n,i]=Ui(r);if(n!==void 0)throw n;let s=Zy(i,{stop:!1},{records:0});for(let u of e){let l=s.__transform(u,function(c){t.push(c)});if(l!==void 0)throw l}if(t.length===0){s.bom(l=>{t.push(l)});let u=s.headers(l=>{t.push(l)});if(u!==void 0)throw u}return t.join("")};var $a=({name:e})=>`csv/${e}.csv`,$i=e=>({path:$a(e),mediaType:"text/csv; charset=utf-8",content:Jy([...e.rows],{header:!0,columns:e.columns.map(({name:r})=>r),escape_formulas:!0,record_delimiter:"windows"})});function Yy({house:e,isDemo:r,revision:t,publishedAt:n,licence:i,evidence:o},a){let{slug:s,name:u}=o.edition;return Te("datapackage.json",{$schema:"https://datapackage.org/profiles/2.0/datapackage.json",name:`edition-${s}-revision-${t}`,title:`${e}: ${u}`,description:`Independent bench tests of fishing line, every reading and what follows from it.${r?" Invented for demonstration.":""}`,version:`${t}.0.0`,created:n,licenses:[i],contributors:[{title:e,roles:["author"]}],resources:a.map(SV)})}function SV(e){let{content:r}=$i(e);return{name:e.name,type:"table",title:e.title,path:$a(e),scheme:"file",format:"csv",mediatype:"text/csv",encoding:"utf-8",bytes:Buffer.byteLength(r),hash:`sha256:${Ke(r)}`,dialect:{delimiter:",",lineTerminator:`\r
`,quoteChar:'"',doubleQuote:!0,header:!0},schema:{fields:e.columns.map(NV),missingValues:[""],primaryKey:e.primaryKey,foreignKeys:e.foreignKeys.map(({columns:t,table:n,references:i})=>({fields:t,reference:{resource:n,fields:i}}))}}}var NV=({name:e,type:r,description:t,unit:n,isOptional:i})=>({name:e,type:r,description:t,...n===void 0?{}:{unit:n},...i?{}:{constraints:{required:!0}}});var zy=ae("specimen","Number of the specimen in its submission");function xy(e){let r=e.flatMap(({submissions:t})=>t);return[OV(e),AV(r),EV(r)]}var OV=e=>({name:"submissions",title:"Accepted submissions",columns:[Li,Rr,k("method","Method"),ae("version","Version of the method"),k("tester","Display name of the tester"),k("reviewer","Display name of the second person"),k("rig","Instrument that took the readings"),{name:"bench day",type:"date",description:"Local date at the bench"},k("spool","Blind code of the spool")],primaryKey:["submission"],foreignKeys:[zr],rows:e.flatMap(({variant:r,submissions:t})=>t.map(({reference:n,method:i,methodVersion:o,tester:a,reviewer:s,rig:u,benchDay:l,spool:c})=>({submission:n,variant:r.slug,method:i,version:o,tester:a,reviewer:s,rig:u,"bench day":l,spool:c})))}),AV=e=>({name:"specimens",title:"Specimens, counted or not",columns:[Li,zy,k("condition","Untreated, or treated: knotted or abraded"),k("state","Valid, invalid or set aside; only valid ones count"),se(k("reason","Why it does not count"))],primaryKey:["submission","specimen"],foreignKeys:[Ua],rows:e.flatMap(({reference:r,specimens:t})=>t.map(({number:n,condition:i,state:o,reason:a})=>({submission:r,specimen:n,condition:i,state:o,reason:a})))}),EV=e=>({name:"readings",title:"Every reading, as entered and in SI",columns:[Li,zy,ae("reading","Running number of the reading in its specimen"),k("role","What was read"),se(ae("station","Place along the specimen")),k("entered","Number as entered"),k("entered unit","Unit as entered"),Ae("value","The same in SI"),k("unit","SI unit")],primaryKey:["submission","specimen","reading"],foreignKeys:[Ua,{columns:["submission","specimen"],table:"specimens",references:["submission","specimen"]}],rows:e.flatMap(({reference:r,specimens:t})=>t.flatMap(n=>n.readings.map(({role:i,station:o,entered:a,value:s,unit:u},l)=>({submission:r,specimen:n.number,reading:l+1,role:i,station:o,entered:a.text,"entered unit":a.unit,value:s,unit:u}))))});var eb=se(ae("place","Standard competition place; empty for a row that is not placed")),rb=se(ae("place if included","Place that an excluded row would have had")),tb=se(ae("group","Too-close-to-call group, 1 is the top group")),nb=se(ae("place low","Simultaneous 95 % place interval, best end")),ib=se(ae("place high","Simultaneous 95 % place interval, worst end")),ob=(e,r)=>[IV(e),FV(r)],IV=e=>{let r=e.scheme.categories.map(({code:t})=>t);return{name:"standings",title:"Overall standings",columns:[eb,rb,tb,nb,ib,Rr,Ae("score","Score under the scheme"),...r.map(t=>se(ae(`place in ${t}`,"Place counted in the score")))],primaryKey:["variant"],foreignKeys:[zr],rows:e.overall.map(({place:t,placeIfIncluded:n,group:i,placeInterval:o,variant:a,score:s,categoryPlaces:u})=>({place:t,"place if included":n,group:i,"place low":o?.low??null,"place high":o?.high??null,variant:a.slug,score:s,...Object.fromEntries(r.map(l=>[`place in ${l}`,u[l]??null]))}))}},_V=[k("category","Category of the scheme"),Rr,eb,rb,tb,nb,ib,Ae("value","Measured value"),se(Ae("low 95 %","Lower end of the 95 % interval")),se(Ae("high 95 %","Upper end of the 95 % interval")),k("unit","Unit of the value and its interval"),ae("specimens","Specimens that count"),ae("submissions","Submissions"),ae("testers","Testers"),ae("rigs","Rigs")],FV=e=>({name:"results",title:"Results and places by category",columns:_V,primaryKey:["category","variant"],foreignKeys:[zr],rows:e.flatMap(({category:r,rows:t})=>t.map(({variant:n,place:i,placeIfIncluded:o,group:a,placeInterval:s,figure:u})=>({category:r.code,variant:n.slug,place:i,"place if included":o,group:a,"place low":s?.low??null,"place high":s?.high??null,value:u.value,"low 95 %":u.low,"high 95 %":u.high,unit:u.unit,specimens:u.specimens,submissions:u.submissions,testers:u.testers,rigs:u.rigs})))});function ab(e){let r=cy(e),t=Oy(r),n=by(r,null),i=e.correction&&Dy(e.correction,{edition:n,categories:t}),o={...n,erratum:i},a=Cy(r,o,t),s=[...jy(a),...ob(o,t),...xy(a)];return[Hy(e),Te("bundle.json",fy(e,r,o,t)),Te("documents/edition.json",o),...t.map(u=>Te(`documents/standings/${u.category.code}.json`,u)),...a.map(u=>Te(`documents/variants/${u.variant.slug}.json`,u)),Te("documents/records.json",By(r)),Te("documents/withdrawn.json",My(e)),Te("documents/catalogue.json",dy(r)),...py(r).map(u=>Te(`documents/methods/${u.slug}-${u.number}.json`,u)),...s.map($i),...e.blindKey===null?[]:[{path:"blind-key.txt",mediaType:"text/plain; charset=utf-8",content:e.blindKey}],Yy(e,s)]}var RV=/^-?\d+(\.\d+)?$/;function Ba(e){return typeof e=="number"?1:typeof e=="string"?RV.test(e)?1:0:e===null||typeof e!="object"?0:Object.values(e).reduce((r,t)=>r+Ba(t),0)}function Ha(e,r,t){if(r===t)return[];let[n,i]=[sb(r),sb(t)],o=e.endsWith(".json")&&n!==void 0&&i!==void 0?lb(e,"",n,i):PV(e,r.split(`
`),t.split(`
`));return o.length>0?o:[{file:e,where:"",found:"the same values in other bytes",expected:"the canonical form (RFC 8785)"}]}function sb(e){try{return JSON.parse(e)}catch{return}}function lb(e,r,t,n){return ub(t)&&ub(n)&&Array.isArray(t)===Array.isArray(n)?[...new Set([...Object.keys(t),...Object.keys(n)])].flatMap(o=>lb(e,`${r}/${MV(o)}`,t[o],n[o])):Object.is(t,n)?[]:[{file:e,where:r,found:Bi(t),expected:Bi(n)}]}var ub=e=>typeof e=="object"&&e!==null,MV=e=>e.replaceAll("~","~0").replaceAll("/","~1");function Bi(e){let r=e===void 0?"nothing":JSON.stringify(e);return r.length>120?`${r.slice(0,120)}…`:r}var PV=(e,r,t)=>Array.from({length:Math.max(r.length,t.length)},(n,i)=>i).filter(n=>r[n]!==t[n]).map(n=>({file:e,where:`line ${n+1}`,found:Bi(r[n]),expected:Bi(t[n])}));var DV=["verify.mjs"],LV=["manifest.json","signature.json"];async function cb(e){let r=await kV(e,"manifest.json"),t=fb(e,"manifest.json",r),n=new Map,i=(await Promise.all(t.files.map(s=>$V(e,s,n)))).flat(),o=await e.read("signature.json"),a=WV(e,t,n);return{name:e.name,edition:t.edition,revision:t.revision,digest:Ke(r),previousDigest:t.previousDigest,keyFingerprint:o&&jV(o),files:t.files.length,figures:a.figures,differences:[...UV("manifest.json",r),...i,...HV(o,r),...await BV(e,t),...a.differences]}}async function kV(e,r){let t=await e.read(r);if(!t)throw new Error(`${e.name} has no ${r}; expected the folder or address of a release.`);return new TextDecoder().decode(t)}function fb(e,r,t){try{return JSON.parse(t)}catch{throw new Error(`${r} of ${e.name} is not JSON; it is damaged. Fetch the release again.`)}}var UV=(e,r)=>Ha(e,r,Ze(JSON.parse(r)));async function $V(e,r,t){let n=await e.read(r.path);if(!n)return[{file:r.path,where:"",found:"no such file",expected:"the file that the manifest lists"}];t.set(r.path,new TextDecoder().decode(n));let i=`${n.length} bytes, SHA-256 ${Ke(n)}`,o=`${r.sizeBytes} bytes, SHA-256 ${r.sha256}`;return i===o?[]:[{file:r.path,where:"",found:i,expected:o}]}async function BV(e,{files:r}){let t=new Set([...r.map(({path:i})=>i),...LV]);return(await e.list()??[]).filter(i=>!t.has(i)).map(i=>({file:i,where:"",found:"a file that the manifest does not list",expected:"no such file"}))}function HV(e,r){let t=n=>[{file:"signature.json",where:"",found:n,expected:"the publisher’s signature of manifest.json"}];if(!e)return t("no such file");try{let{publicKey:n,signature:i,...o}=JSON.parse(new TextDecoder().decode(e));if(Ze({publicKey:n,signature:i,...o})!==new TextDecoder().decode(e))return t("another form than the canonical one");if(Ze(o)!==Ze({formatVersion:1,algorithm:"Ed25519",signed:"manifest.json"}))return t("another kind of signature");let a=TV({key:Buffer.from(n,"base64"),format:"der",type:"spki"});return[n,i].every(u=>Buffer.from(u,"base64").toString("base64")===u)&&CV(null,Buffer.from(r),a,Buffer.from(i,"base64"))?[]:t("a signature that does not fit")}catch{return t("what is not a signature")}}function jV(e){try{return Ke(Buffer.from(JSON.parse(new TextDecoder().decode(e)).publicKey,"base64"))}catch{return null}}function WV(e,r,t){let n=t.get("bundle.json");if(n===void 0)throw new Error(`${e.name} has no bundle.json; there is nothing to compute from.`);let{inputs:i}=fb(e,"bundle.json",n),o=ab(i),a=new Set(o.map(({path:d})=>d)),s=o.flatMap(({path:d,content:p})=>Ha(d,t.get(d)??"",p)),u=r.files.filter(({path:d})=>!a.has(d)&&!DV.includes(d)).map(({path:d})=>({file:d,where:"",found:"a file that nothing computes",expected:"no such file"})),c=[["edition",r.edition,i.evidence.edition.slug],["revision",r.revision,i.revision],["publishedAt",r.publishedAt,i.publishedAt],["softwareVersion",r.softwareVersion,i.softwareVersion],["previousDigest",r.previousDigest,i.previousDigest]].filter(([,d,p])=>d!==p).map(([d,p,v])=>({file:"manifest.json",where:`/${d}`,found:String(p),expected:String(v)}));return{figures:o.filter(({path:d})=>d.startsWith("documents/")).reduce((d,{content:p})=>d+Ba(JSON.parse(p)),0),differences:[...s,...u,...c]}}var ja=50,XV=({file:e,where:r,found:t,expected:n})=>`  ${e}${r===""?"":` ${r}`}: found ${t}; expected ${n}`,Mr=e=>process.stdout.write(`${e}
`);async function QV(e){let r=[];for(let o of await Za(e)){let a=await cb(o);r.push(a),Mr(`${a.edition}, revision ${a.revision} (${a.name})`),Mr(`  digest ${a.digest}`),Mr(`  signed by the key ${a.keyFingerprint??"of nobody"}`)}let t=[...r.flatMap(o=>o.differences),...Ya(r)],n=r.reduce((o,a)=>o+a.figures,0),i=r.reduce((o,a)=>o+a.files,0);if(t.length===0)return Mr(`${n} figures recomputed, all equal; ${i} files, every one as signed.`),0;Mr(`${n} figures recomputed; ${t.length} differences:`);for(let o of t.slice(0,ja))Mr(XV(o));return t.length>ja&&Mr(`  … and ${t.length-ja} more`),1}var KV=VV(GV(import.meta.url)),[ZV=KV]=process.argv.slice(2);process.exitCode=await QV(ZV).catch(e=>(Mr(e instanceof Error?e.message:String(e)),2));
